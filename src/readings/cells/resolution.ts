/** Different values looked at; more than these come from a fine scale anyway. */
const mostValues = 4096;
/** Values are told apart at this step, finer than any logger prints. */
const grain = 1e6;

/**
 * Smallest step between different values of one probe, in their unit; `printed`
 * (one unit of the last decimal written) where there are fewer than two
 * different values. NaN is passed over. Linear in the values.
 */
export const smallestStep = (values: Float64Array, printed: number): number => {
  const seen = new Set<number>();
  let last = Number.NaN;
  for (let at = 0; at < values.length && seen.size < mostValues; at += 1) {
    const value = values[at]!;
    if (value === last || Number.isNaN(value)) continue;
    seen.add(Math.round(value * grain));
    last = value;
  }
  const sorted = Float64Array.from(seen).toSorted();
  let least = Number.POSITIVE_INFINITY;
  for (let at = 1; at < sorted.length; at += 1)
    least = Math.min(least, sorted[at]! - sorted[at - 1]!);
  return Number.isFinite(least) ? least / grain : printed;
};
