/** Different values looked at; more than these come from a fine scale anyway. */
const mostValues = 4096;
/** Values are told apart at this step, finer than any logger prints. */
const grain = 1e6;

/** Of fewer readings than this, two neighbouring values need not be among them. */
const byHand = 20;

/**
 * The step of which all differences of a few values are whole multiples:
 * Euclid's algorithm, remainders under a quarter of the printed step taken for
 * rounding.
 */
const commonStep = (sorted: Float64Array, printed: number): number => {
  let step = 0;
  for (let at = 1; at < sorted.length; at += 1) {
    let [larger, rest] = [sorted[at]! - sorted[at - 1]!, step];
    while (rest > printed / 4) {
      const left = larger % rest;
      [larger, rest] = [rest, Math.min(left, rest - left)];
    }
    step = larger;
  }
  return step;
};

/**
 * Smallest step between different values of one probe, in their unit; `printed`
 * (one unit of the last decimal written) where there are fewer than two
 * different values. Of fewer than 20 readings, by hand, the step that all
 * differences have in common: 20.1, 38.4 and 41.0 go by 0.1, not by 2.6. NaN
 * is passed over. Linear in the values.
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
  if (!Number.isFinite(least)) return printed;
  const isFew = values.length < byHand && least > 1.5 * printed * grain;
  return (isFew ? commonStep(sorted, printed * grain) : least) / grain;
};
