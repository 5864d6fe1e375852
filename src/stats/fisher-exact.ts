/** Counts of a 2 x 2 table, row by row. */
export type TwoByTwo = readonly [readonly [number, number], readonly [number, number]];

/** Tables this little likelier than the one seen count as no likelier: R's fisher.test does the same. */
const tie = 1 + 1e-7;

/**
 * Two-sided p of Fisher's exact test: the probability, with all margins as they
 * are and rows independent of columns, of a table no likelier than the one seen.
 *
 * Source: Fisher 1935, The Design of Experiments (from memory); two sides and
 * ties as in R's fisher.test. Linear in the smallest margin; about 1e-13
 * relative for thousands of counts; below 1e-300 it may be 0. 1 where a margin
 * is 0, as nothing can be told then; NaN where a count is not a whole number >= 0.
 */
export const fisherExact = (table: TwoByTwo): number => {
  const [[a, b], [c, d]] = table;
  if (![a, b, c, d].every(isCount)) return NaN;
  const { least, weights } = tableWeights(a + b, c + d, a + c);
  return shareUpTo(weights, weights[a - least]!);
};

/**
 * The smallest p that any table with these margins could have: that of the
 * farthest one. Where it is above the level one wants to judge at, no outcome
 * could have shown anything. NaN where the totals are no counts or disagree.
 */
export const leastPossible = (
  rowTotals: readonly [number, number],
  columnTotals: readonly [number, number],
): number => {
  const [first, second] = rowTotals;
  if (![...rowTotals, ...columnTotals].every(isCount)) return NaN;
  if (first + second !== columnTotals[0] + columnTotals[1]) return NaN;
  const { weights } = tableWeights(first, second, columnTotals[0]);
  return shareUpTo(weights, Math.min(weights[0]!, weights[weights.length - 1]!));
};

const isCount = (count: number): boolean => Number.isSafeInteger(count) && count >= 0;

/**
 * Probabilities of all tables with these margins, relative to the likeliest,
 * by their upper left count from `least` on: hypergeometric, by the ratio of
 * neighbours outward from the likeliest, so that nothing overflows.
 */
const tableWeights = (firstRow: number, secondRow: number, firstColumn: number) => {
  const least = Math.max(0, firstColumn - secondRow);
  const most = Math.min(firstRow, firstColumn);
  const ways = (firstRow + 1) * ((firstColumn + 1) / (firstRow + secondRow + 2));
  const likeliest = Math.min(most, Math.max(least, Math.floor(ways)));
  const ratio = (count: number): number =>
    ((firstRow - count) / (count + 1)) *
    ((firstColumn - count) / (secondRow - firstColumn + count + 1));
  const weights = new Float64Array(most - least + 1);
  weights[likeliest - least] = 1;
  for (let count = likeliest; count < most; count += 1)
    weights[count + 1 - least] = weights[count - least]! * ratio(count);
  for (let count = likeliest - 1; count >= least; count -= 1)
    weights[count - least] = weights[count + 1 - least]! / ratio(count);
  return { least, weights };
};

/** Share of the tables' probability in those no likelier than `weight`. */
const shareUpTo = (weights: Float64Array, weight: number): number => {
  let inside = 0;
  let beyond = 0;
  for (const one of weights) {
    if (one <= weight * tie) inside += one;
    else beyond += one;
  }
  return inside / (inside + beyond);
};
