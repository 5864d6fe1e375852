import { heaviestAssignment } from "./heaviest-assignment.ts";
import { largestMatching } from "./largest-matching.ts";

/** Values closer than this are equal: below it the last digits of a sum would decide. */
const resolution = 1e-9;

/** null: not to be used. */
type Steps = readonly (readonly (number | null)[])[];

const inSteps = (values: readonly (readonly (number | null)[])[], least: number): Steps =>
  values.map((row) =>
    row.map((value) => (value !== null && value >= least ? Math.round(value / resolution) : null)),
  );

const placedFrom = (steps: Steps, threshold: number): number =>
  largestMatching(steps.map((row) => row.map((step) => step !== null && step >= threshold)));

/** The highest value below which no pair is needed to place as many rows as can be placed. */
const weakestNeeded = (steps: Steps): number => {
  const levels = [...new Set(steps.flat())]
    .filter((step) => step !== null)
    .toSorted((a, b) => a - b);
  const most = placedFrom(steps, -Infinity);
  let [enough, tooHigh] = [0, levels.length];
  while (tooHigh - enough > 1) {
    const middle = (enough + tooHigh) >> 1;
    if (placedFrom(steps, levels[middle]!) === most) enough = middle;
    else tooHigh = middle;
  }
  return levels[enough] ?? Infinity;
};

/**
 * The aims as digits of one number, the first in the highest: that the row is
 * placed, its value, and for ties a low column, the first row's counting most.
 */
const weigher = (rows: number, columns: number) => {
  const base = BigInt(columns + 1);
  const value = base ** BigInt(rows);
  const placed = value * BigInt(Math.min(rows, columns) + 1) * BigInt(Math.round(1 / resolution));
  return (step: number, row: number, column: number): bigint =>
    placed + value * BigInt(step) + BigInt(columns - column) * base ** BigInt(rows - 1 - row);
};

/**
 * Places rows in columns, one column for a row at most and one row for a
 * column. In this order: as many rows as can be; the weakest value among the
 * placed as high as can be; then their sum; then the first row in the lowest
 * column, the second, and so on. Values closer than 1e-9 count as equal.
 *
 * @param values one row per row, all of the same length, each 0 to 1, as
 *   probabilities; null or NaN where the two do not go together
 * @param least pairs below it are never used
 * @returns the column of each row, null where it has none
 *
 * Method: bottleneck by bisection of the values over largest matchings, then an
 * assignment of the largest sum among the pairs not below it (Burkard,
 * Dell'Amico & Martello, Assignment Problems, from memory). Smallest: no rows
 * or no columns, where none is placed.
 */
export const assign = (
  values: readonly (readonly (number | null)[])[],
  least: number,
): readonly (number | null)[] => {
  const steps = inSteps(values, least);
  const threshold = weakestNeeded(steps);
  const columns = values[0]?.length ?? 0;
  const weigh = weigher(values.length, columns);
  // Columns that do not exist and pairs not to be used weigh nothing: there a row goes unplaced.
  const weights = steps.map((row, at) =>
    Array.from({ length: Math.max(columns, values.length) }, (_, column) => {
      const step = row[column] ?? null;
      return step !== null && step >= threshold ? weigh(step, at, column) : 0n;
    }),
  );
  return heaviestAssignment(weights).map((column, row) =>
    weights[row]![column] === 0n ? null : column,
  );
};
