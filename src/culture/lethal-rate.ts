/** A log of a heated pot as the heating step sees it: corrected readings. */
export interface HeatingReadings {
  /** Strictly increasing. */
  readonly minutes: Float64Array;
  /** degC, thermometer-corrected. */
  readonly celsius: Float64Array;
}

/** What the rate is stated for: minutes at `celsius`, ten times as fast `z` degC above. */
export interface RateReference {
  readonly celsius: number;
  readonly z: number;
}

/**
 * Lethal rate L = 10^((T - reference) / z): how many minutes at the reference
 * one minute at T stands for (Bigelow 1921; dairy-science texts). A convention
 * for comparing heatings, here of any effect of heat with that z; it says
 * nothing of safety.
 */
export const lethalRate = (celsius: number, reference: RateReference): number =>
  10 ** ((celsius - reference.celsius) / reference.z);

export interface Equivalent {
  /** Minutes at the reference. */
  readonly minutes: number;
  /** What the coarseness of the readings may have added, minutes; 0 or more. */
  readonly overstated: number;
  /** Mean temperature weighted by the rate, degC: about where the minutes were earned. */
  readonly centre: number;
}

/**
 * Minutes at the reference that would do the same: the rate's integral over
 * time by the trapezoidal rule, the usual one. Where the temperature runs
 * straight between two readings the exact integral is their rates' logarithmic
 * mean, which is less; the difference is given as `overstated`. Nothing is
 * counted over gaps (intervals of `gap` minutes and more).
 *
 * `centre` is NaN where nothing was counted. Smallest sample: two readings.
 */
export const equivalentMinutes = (
  { minutes, celsius }: HeatingReadings,
  reference: RateReference,
  gap: number,
): Equivalent => {
  let total = 0;
  let overstated = 0;
  let moment = 0;
  for (let index = 1; index < minutes.length; index += 1) {
    const length = minutes[index]! - minutes[index - 1]!;
    if (length >= gap) continue;
    const [before, after] = [celsius[index - 1]!, celsius[index]!];
    const [first, last] = [lethalRate(before, reference), lethalRate(after, reference)];
    const part = (length * (first + last)) / 2;
    total += part;
    overstated += part - length * logarithmicMean(first, last);
    moment += (length * (first * before + last * after)) / 2;
  }
  return { minutes: total, overstated: Math.max(0, overstated), centre: moment / total };
};

/** (b - a) / ln(b / a); a series where they are nearly alike. */
const logarithmicMean = (a: number, b: number): number => {
  if (a === 0 || b === 0) return 0;
  const ratio = Math.log(b / a);
  const middle = Math.sqrt(a * b);
  return Math.abs(ratio) < 1e-3 ? middle * (1 + (ratio * ratio) / 24) : (b - a) / ratio;
};
