import { median } from "./median.ts";

/** Sums from the start, so that the squared deviations of any stretch cost two look-ups. */
export interface Running {
  readonly sums: Float64Array;
  readonly squares: Float64Array;
}

export const runningSums = (values: ArrayLike<number>): Running => {
  const centre = median(values);
  const sums = new Float64Array(values.length + 1);
  const squares = new Float64Array(values.length + 1);
  for (let i = 0; i < values.length; i++) {
    const deviation = values[i]! - centre;
    sums[i + 1] = sums[i]! + deviation;
    squares[i + 1] = squares[i]! + deviation * deviation;
  }
  return { sums, squares };
};

/** Squared deviations of values[from..to) from their own mean. */
export const scatter = ({ sums, squares }: Running, from: number, to: number): number =>
  squares[to]! - squares[from]! - (sums[to]! - sums[from]!) ** 2 / (to - from);

/**
 * Where to cut `values` so that the squared deviations of the pieces from their
 * own means, plus `penalty` for each cut (same unit, squared), are least: the
 * exact optimum, by optimal partitioning with pruning (PELT: Killick, Fearnhead
 * & Eckley 2012). Pieces are at least `minLength` long. Time between n and
 * n^2, the more cuts the less.
 */
export const partition = (
  values: ArrayLike<number>,
  penalty: number,
  minLength: number,
): number[] => {
  const running = runningSums(values);
  const n = values.length;
  const best = new Float64Array(n + 1).fill(Infinity);
  const previous = new Int32Array(n + 1);
  // A start that is beaten by a change at `end` stays of use until that change may be followed
  // by another: minLength readings later.
  const useless = new Float64Array(n + 1).fill(Infinity);
  best[0] = -penalty;
  let starts: number[] = [0];
  for (let end = minLength; end <= n; end++) {
    starts = starts.filter((from) => useless[from]! > end);
    const newest = end - minLength;
    if (newest >= minLength) starts.push(newest);
    for (const from of starts) {
      const cost = best[from]! + scatter(running, from, end) + penalty;
      if (cost < best[end]!) {
        best[end] = cost;
        previous[end] = from;
      }
    }
    for (const from of starts) {
      const beaten = best[from]! + scatter(running, from, end) > best[end]!;
      if (beaten) useless[from] = Math.min(useless[from]!, end + minLength);
    }
  }
  return traceBack(previous);
};

const traceBack = (previous: Int32Array): number[] => {
  const changes: number[] = [];
  for (let at = previous[previous.length - 1]!; at > 0; at = previous[at]!) changes.push(at);
  return changes.toReversed();
};
