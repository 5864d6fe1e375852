/** What must be true of the whole hold, for offsets of the readings from the truth. */
export interface Acceptance {
  readonly low: number;
  readonly high: number;
  /** Share of the values that must lie in low..high. */
  readonly share: number;
  /** Highest value the truth may take; Infinity for none. */
  readonly ceiling: number;
}

/** A closed interval of offsets, degC. */
export interface OffsetInterval {
  readonly from: number;
  readonly to: number;
}

/**
 * The offsets d for which at least `share` of the equally weighted values,
 * moved by d, lie inside low..high and `peak` + d does not pass the ceiling.
 *
 * Every run of k = ceil(share n) neighbouring sorted values fits for d between
 * low - first and high - last; the answer is the union over all runs.
 *
 * @param sorted values in rising order, degC
 * @param peak the highest temperature of the hold as read, degC
 * @returns disjoint intervals in rising order; empty when no offset will do
 */
export const acceptableOffsets = (
  sorted: Float64Array,
  peak: number,
  acceptance: Acceptance,
): readonly OffsetInterval[] => {
  const count = Math.max(1, Math.ceil(acceptance.share * sorted.length - 1e-9));
  const highest = acceptance.ceiling - peak;
  const intervals: { from: number; to: number }[] = [];
  for (let first = sorted.length - count; first >= 0; first -= 1) {
    const from = acceptance.low - sorted[first]!;
    const to = Math.min(highest, acceptance.high - sorted[first + count - 1]!);
    if (from > to) continue;
    const before = intervals.at(-1);
    if (before !== undefined && from <= before.to) before.to = Math.max(before.to, to);
    else intervals.push({ from, to });
  }
  return intervals;
};
