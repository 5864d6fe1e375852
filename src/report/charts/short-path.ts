/** A long path in fewer bytes: steps from point to point on a grid of a tenth of a px, finer than a screen shows. */

const grid = 10;
/** Shorter ones, and those with curves, stay as they are. */
const leastSteps = 6;
const straight = /^[MLZ\d.,\s-]+$/;

const written = (tenths: number): string =>
  String(tenths / grid).replace(/^(-?)0\./, (_, sign: string) => `${sign}.`);

const pair = (across: number, down: number): string => {
  const second = written(down);
  return `${written(across)}${second.startsWith("-") ? "" : ","}${second}`;
};

/** Rounded before the difference is taken, so that no error adds up. */
const onGrid = (point: string): readonly [number, number] => {
  const [x = 0, y = 0] = point.split(/[,\s]+/).map((number) => Math.round(Number(number) * grid));
  return [x, y];
};

const shortRun = (run: string): string => {
  const closed = run.endsWith("Z");
  const points = run.replace(/Z$/, "").split("L").map(onGrid);
  const steps = points.slice(1).flatMap(([x, y], at) => {
    const [fromX, fromY] = points[at] ?? [x, y];
    return x === fromX && y === fromY ? [] : [pair(x - fromX, y - fromY)];
  });
  const [first] = points;
  const start = first === undefined ? "" : `M${pair(...first)}`;
  return `${start}${steps.length === 0 ? "" : `l${steps.join(" ")}`}${closed ? "Z" : ""}`;
};

/** Of a path of M, L and Z alone; a point by itself, which only a round cap shows, is kept. */
export const shortPath = (path: string): string => {
  if (!straight.test(path) || path.split("L").length <= leastSteps) return path;
  return path.split("M").slice(1).map(shortRun).join("");
};
