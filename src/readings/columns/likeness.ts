import type { ColumnFacts } from "./column-facts.ts";

const pairsOf = (a: ColumnFacts, b: ColumnFacts): [number, number][] =>
  a.values.flatMap((value, at): [number, number][] => {
    const other = b.values[at] ?? Number.NaN;
    return Number.isNaN(value) || Number.isNaN(other) ? [] : [[value, other]];
  });

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Correlation of the pairs (Pearson); 0 where one side does not vary. */
const correlation = (pairs: readonly [number, number][]): number => {
  const left = mean(pairs.map(([a]) => a));
  const right = mean(pairs.map(([, b]) => b));
  let cross = 0;
  let leftSquares = 0;
  let rightSquares = 0;
  for (const [a, b] of pairs) {
    cross += (a - left) * (b - right);
    leftSquares += (a - left) ** 2;
    rightSquares += (b - right) ** 2;
  }
  const scale = Math.sqrt(leftSquares * rightSquares);
  return scale === 0 ? 0 : cross / scale;
};

/** Half of the differences are within this, in the file's unit (common sense, no source). */
const nearness = 8;
/** Humidity falls as the temperature rises; two thermometers go together. */
const together = 0.5;

/**
 * True when two columns run as two thermometers in one appliance do: near each
 * other, rising and falling together.
 */
export const runAlike = (a: ColumnFacts, b: ColumnFacts): boolean => {
  const pairs = pairsOf(a, b);
  if (pairs.length === 0) return false;
  const apart = pairs.map(([x, y]) => Math.abs(x - y)).toSorted((x, y) => x - y);
  const middle = apart[apart.length >> 1] ?? Number.NaN;
  return middle <= nearness && correlation(pairs) > together;
};

/** True when `fahrenheit` shows the same readings as `celsius` in the other unit. */
export const isSameInFahrenheit = (celsius: ColumnFacts, fahrenheit: ColumnFacts): boolean => {
  const pairs = pairsOf(celsius, fahrenheit);
  const same = pairs.filter(([c, f]) => Math.abs(c * 1.8 + 32 - f) <= 1);
  return pairs.length > 0 && same.length >= 0.9 * pairs.length;
};
