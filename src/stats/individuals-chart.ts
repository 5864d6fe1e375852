/** Mean range of two independent normal values in standard deviations, as the handbook rounds it. */
const d2 = 1.128;
/** Upper limit of ranges of two, in mean ranges. */
const upperRangeFactor = 3.267;

/** Shewhart's chart of single values. */
export interface IndividualsChart {
  readonly centre: number;
  /** Mean distance between neighbours in time. */
  readonly meanMovingRange: number;
  /** Standard deviation of one value: the mean moving range by d2. */
  readonly deviation: number;
  readonly low: number;
  readonly high: number;
  /** Limit of the moving ranges. */
  readonly rangeHigh: number;
  /** One for each value: outside the limits. */
  readonly signals: readonly boolean[];
  /** One for each value from the second on: farther from the one before than the limit. */
  readonly rangeSignals: readonly boolean[];
}

/**
 * Limits of single values whose standard deviation is known: centre -+ width * deviation.
 *
 * @param width half-width in standard deviations
 */
export const individualsLimits = (
  centre: number,
  deviation: number,
  width = 3,
): { readonly low: number; readonly high: number } => ({
  low: centre - width * deviation,
  high: centre + width * deviation,
});

/**
 * Individuals chart of values in their order, with the standard deviation taken
 * from the moving ranges of two (their mean by d2 = 1.128), three of which are
 * the limits; ranges are held to D4 = 3.267 times their mean.
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2. Smallest
 * sample 2, null below. From so few the limits are hardly known, and of two or
 * three values none can lie outside: prefer `individualsLimits` where the
 * deviation is known.
 */
export const individualsChart = (values: readonly number[]): IndividualsChart | null => {
  if (values.length < 2) return null;
  const ranges = values.slice(1).map((value, index) => Math.abs(value - values[index]!));
  const centre = meanOf(values);
  const meanMovingRange = meanOf(ranges);
  const deviation = meanMovingRange / d2;
  const { low, high } = individualsLimits(centre, deviation);
  const rangeHigh = upperRangeFactor * meanMovingRange;
  return {
    centre,
    meanMovingRange,
    deviation,
    low,
    high,
    rangeHigh,
    signals: values.map((value) => value < low || value > high),
    rangeSignals: ranges.map((range) => range > rangeHigh),
  };
};

/** Taken from the first value on, so that equal values have exactly themselves as mean. */
const meanOf = (values: readonly number[]): number => {
  const first = values[0]!;
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length;
};
