import { recogniseTimes } from "../../../src/readings/times/clock.ts";
import type { Outcome } from "../../../src/problem.ts";
import type { FoundTimes, TimeOptions } from "../../../src/readings/times/time-types.ts";

export const asCells = (rows: readonly (string | readonly string[])[]): string[][] =>
  rows.map((row) => (typeof row === "string" ? [row] : [...row]));

/** Recognises the rows from up to 50 of them and reads them all; line 2 is the first. */
export const readTimes = (
  rows: readonly (string | readonly string[])[],
  options: TimeOptions = {},
): Outcome<FoundTimes> & { readonly taken: readonly boolean[] } => {
  const cells = asCells(rows);
  const recogniser = recogniseTimes(cells.slice(0, 50), options);
  if (recogniser === null) throw new Error(`not recognised: ${JSON.stringify(cells.slice(0, 3))}`);
  const accumulator = recogniser.createAccumulator();
  const taken = cells.map((row, index) => accumulator.add(row, index + 2));
  return { ...accumulator.finish(), taken };
};

/** Seconds from the first row on. */
export const secondsFrom = (
  rows: readonly (string | readonly string[])[],
  options: TimeOptions = {},
): number[] => {
  const found = readTimes(rows, options);
  if (!found.ok) throw new Error(JSON.stringify(found.problem));
  const { seconds } = found.value;
  return Array.from(seconds, (value) => value - seconds[0]!);
};

export const foundTimes = (
  rows: readonly (string | readonly string[])[],
  options: TimeOptions = {},
): FoundTimes => {
  const found = readTimes(rows, options);
  if (!found.ok) throw new Error(JSON.stringify(found.problem));
  return found.value;
};

export const problemOf = (
  rows: readonly (string | readonly string[])[],
  options: TimeOptions = {},
): unknown => {
  const found = readTimes(rows, options);
  return found.ok ? null : found.problem;
};
