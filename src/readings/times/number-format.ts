import { readTimeHeading, type TimeHeading } from "./time-heading.ts";
import { timeNumber, unitBehind, type NumberFormat } from "./numeric.ts";

const secondsEach = { milliseconds: 1, seconds: 1, minutes: 60, hours: 3600 } as const;
const asSeconds = { secondsEach: 1, perSecond: 1, resolution: 0 } as const;

/** Powers of a second, and the instants from 2001 to 2100 that they write. */
const epochs = [
  ["epoch-seconds", 1],
  ["epoch-milliseconds", 1e3],
  ["epoch-microseconds", 1e6],
] as const;
const earliest = 1e9;
const latest = 4.11e9;

/** Spreadsheet days of 1954 to 2119. */
const earliestSerial = 20000;
const latestSerial = 80000;

/** Share of steps that must not go back: time rises, but for rows out of order. */
const leastRising = 0.8;

const rises = (values: readonly number[]): boolean => {
  const back = values.filter((value, index) => index > 0 && value < values[index - 1]!).length;
  return back <= (1 - leastRising) * (values.length - 1) && values.at(-1)! >= values[0]!;
};

const allWithin = (values: readonly number[], low: number, high: number): boolean =>
  values.every((value) => value >= low && value < high);

const epochFormat = (values: readonly number[]): NumberFormat | null => {
  for (const [format, scale] of epochs)
    if (allWithin(values, earliest * scale, latest * scale))
      return { ...asSeconds, format, perSecond: scale, origin: "epoch" };
  return null;
};

const decimalsOf = (cell: string): number => /[.,](\d+)/.exec(cell)?.[1]?.length ?? 0;

/** A step between 0.4 s and a day, as loggers have. */
const stepsLikeLogger = (values: readonly number[]): boolean => {
  const steps = values.slice(1).map((value, index) => value - values[index]!);
  const middle = steps.toSorted((a, b) => a - b)[steps.length >> 1];
  return middle !== undefined && middle >= 0.4 / 86400 && middle <= 1;
};

const serialFormat = (
  values: readonly number[],
  cells: readonly string[],
  heading: TimeHeading,
): NumberFormat | null => {
  if (!allWithin(values, earliestSerial, latestSerial)) return null;
  if (values.every(Number.isInteger) || !(heading.time || stepsLikeLogger(values))) return null;
  const decimals = cells.reduce((most, cell) => Math.max(most, decimalsOf(cell)), 0);
  return {
    ...asSeconds,
    format: "spreadsheet-serial",
    origin: "serial",
    secondsEach: 86400,
    resolution: 86400 / 10 ** decimals,
  };
};

const elapsedFormat = (heading: TimeHeading): NumberFormat | null => {
  if (heading.unit !== null)
    return {
      format: `elapsed-${heading.unit}`,
      origin: "elapsed",
      secondsEach: secondsEach[heading.unit],
      perSecond: heading.unit === "milliseconds" ? 1000 : 1,
      resolution: 0,
    };
  if (!heading.time && !heading.elapsed) return null;
  return { ...asSeconds, format: "elapsed-seconds", origin: "undecidable" };
};

/**
 * How numbers in a candidate time column count time, or null where they do
 * not: instants since 1970 by their size; elapsed time by the unit in the
 * heading or behind the number; a spreadsheet's days by size and step. Numbers
 * under a heading that names a time without a unit cannot be told. Numbers that
 * do not rise, a row's number, and anything under other headings are no times.
 */
export const numberFormat = (
  cells: readonly string[],
  headings: readonly string[],
): NumberFormat | null => {
  const values = cells.map(timeNumber);
  const heading = readTimeHeading([...headings, unitBehind(cells[0] ?? "")]);
  if (values.length === 0 || !values.every(Number.isFinite) || !rises(values)) return null;
  if (heading.other && !heading.time && !heading.elapsed) return null;
  const epoch = epochFormat(values);
  if (epoch !== null) return epoch;
  if (heading.unit !== null) return elapsedFormat(heading);
  return serialFormat(values, cells, heading) ?? elapsedFormat(heading);
};
