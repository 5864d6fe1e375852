/** The containers' names in the plot, each beside a sample of its line and mark. */
import { colour, textSize } from "./chart-theme.ts";
import type { Plot } from "./plot.ts";
import { containerLook } from "./response-looks.ts";
import type { DrawnCurve } from "./response-view.ts";

const rowHeight = textSize + 5;
const sampleWidth = 26;

/** A name longer than this is cut; the text below the chart has it whole. */
const mostLetters = { wide: 40, narrow: 26 } as const;

export const cutName = (name: string, most: number): string =>
  [...name].length > most ? `${[...name].slice(0, most - 1).join("")}…` : name;

interface Place {
  /** px: right end of the samples, and middle of the first row. */
  readonly right: number;
  readonly top: number;
  readonly size: "wide" | "narrow";
}

type Named = Pick<Plot, "texts" | "rules"> & { readonly markers: NonNullable<Plot["markers"]> };

const key = ({ setting }: DrawnCurve["points"][number]): string => JSON.stringify(setting);

/** At a setting all are drawn at, if there is one. */
const levelBeside = ({ points }: DrawnCurve, all: readonly DrawnCurve[]): number => {
  const shared = points.findLast((point) =>
    all.every((other) => other.points.some((each) => key(each) === key(point))),
  );
  return (shared ?? points.at(-1))?.level.mean ?? 0;
};

/** Under each other, warmest first, as their lines lie. */
export const containerNames = (
  curves: readonly DrawnCurve[],
  { right, top, size }: Place,
): Named => {
  const sorted = curves.toSorted((a, b) => levelBeside(b, curves) - levelBeside(a, curves));
  const rowOf = (row: number): number => top + row * rowHeight;
  return {
    texts: sorted.map(({ name }, row) => ({
      x: right - sampleWidth - 7,
      y: rowOf(row),
      text: cutName(name, mostLetters[size]),
      align: "right",
      fill: colour.ink,
      halo: colour.paper,
    })),
    rules: sorted.map(({ at }, row) => ({
      left: right - sampleWidth,
      right,
      top: rowOf(row),
      bottom: rowOf(row),
      stroke: containerLook(at).stroke,
      width: 1.8,
      dash: containerLook(at).dash,
    })),
    markers: sorted.map(({ at }, row) => ({
      x: right - sampleWidth / 2,
      y: rowOf(row),
      shape: containerLook(at).shape,
      fill: containerLook(at).stroke,
      stroke: colour.paper,
    })),
  };
};

/** Height the names take, px. */
export const namesHeight = (curves: readonly DrawnCurve[]): number => curves.length * rowHeight;
