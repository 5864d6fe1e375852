/** Of every row and column a potential; no pair weighs more than the two together. */
interface State {
  readonly weights: readonly (readonly bigint[])[];
  readonly row: bigint[];
  readonly column: bigint[];
  /** Which row each column holds. The last entry is no column: the row being placed starts there. */
  readonly held: (number | null)[];
}

/** The shortest way found so far to each column: what it costs and from which column it comes. */
interface Way {
  readonly cost: (bigint | null)[];
  readonly from: number[];
  readonly done: boolean[];
}

const isLess = (a: bigint, b: bigint | null | undefined): boolean =>
  b === null || b === undefined || a < b;

/** Looks on from column `at`; the column that is nearest now. */
const nearest = ({ weights, row, column, held }: State, way: Way, at: number): number => {
  const from = held[at]!;
  let best = -1;
  for (const [to, weight] of weights[from]!.entries()) {
    if (way.done[to] === true) continue;
    const cost = row[from]! + column[to]! - weight;
    if (isLess(cost, way.cost[to])) {
      way.cost[to] = cost;
      way.from[to] = at;
    }
    if (best < 0 || isLess(way.cost[to]!, way.cost[best])) best = to;
  }
  return best;
};

/** Moves the potentials so that the pair with the nearest column becomes tight. */
const shift = ({ row, column, held }: State, way: Way, by: bigint): void => {
  for (let at = 0; at < held.length; at += 1) {
    if (way.done[at] === true) {
      row[held[at]!]! -= by;
      column[at]! += by;
    } else if (way.cost[at] !== undefined && way.cost[at] !== null) {
      way.cost[at]! -= by;
    }
  }
};

const placeRow = (state: State, start: number): void => {
  const { held } = state;
  const none = held.length - 1;
  const way: Way = { cost: [], from: [], done: [] };
  held[none] = start;
  let at = none;
  while (held[at] !== null) {
    way.done[at] = true;
    const next = nearest(state, way, at);
    shift(state, way, way.cost[next]!);
    at = next;
  }
  while (at !== none) {
    held[at] = held[way.from[at]!]!;
    at = way.from[at]!;
  }
  held[none] = null;
};

/**
 * The assignment of rows to columns, one column each and no column twice, of
 * the largest sum of weights. Whole numbers of any size, so that sums are exact
 * and several aims can be put into one weight, the first in the highest digits.
 *
 * @param weights one row per row, all of the same length, at least as many
 *   columns as rows
 * @returns the column of each row; which of several heaviest is not said
 *
 * Method: shortest augmenting paths with potentials (Kuhn 1955, Munkres 1957;
 * in this form Jonker & Volgenant 1987, from memory), rows^2 times columns.
 */
export const heaviestAssignment = (weights: readonly (readonly bigint[])[]): readonly number[] => {
  const columns = weights[0]?.length ?? 0;
  const state: State = {
    weights,
    row: weights.map((row) => row.reduce((most, one) => (one > most ? one : most), 0n)),
    column: Array.from({ length: columns + 1 }, () => 0n),
    held: Array.from({ length: columns + 1 }, () => null),
  };
  for (let row = 0; row < weights.length; row += 1) placeRow(state, row);
  const placed = weights.map(() => -1);
  state.held.forEach((row, column) => {
    if (row !== null) placed[row] = column;
  });
  return placed;
};
