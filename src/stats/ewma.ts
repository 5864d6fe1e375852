/** How an exponentially weighted moving average chart is set. */
export interface EwmaSetting {
  /** Where the values should lie; the average starts there. */
  readonly centre: number;
  /** Standard deviation of one value, >= 0. */
  readonly deviation: number;
  /** Weight of the newest value, above 0, at most 1 (then each value stands alone). */
  readonly lambda?: number;
  /** Half-width of the limits, in standard deviations of the average. */
  readonly width?: number;
}

/** The average after one more value, with its limits there. */
export interface EwmaPoint {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Outside its limits. */
  readonly signal: boolean;
}

/** Weight and width of the handbook's worked example. */
const usual = { lambda: 0.3, width: 3 };

/**
 * Limits the chart settles to: centre -+ width * deviation * sqrt(lambda / (2 - lambda)).
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
 */
export const ewmaLimits = (setting: EwmaSetting): { readonly low: number; readonly high: number } =>
  limitsWith(setting, 1);

/**
 * Exponentially weighted moving average of values in their order, one point for
 * each. It sees a small lasting shift sooner than single values do. The limits
 * are those of the average so far: the settled ones times
 * sqrt(1 - (1 - lambda)^2t) at the t-th value, so they widen over the first few.
 *
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4 (chart and
 * settled limits); Lucas & Saccucci 1990, Technometrics 32:1 (limits in time,
 * from memory). Smallest sample 1; no values give no points.
 */
export const ewma = (values: readonly number[], setting: EwmaSetting): readonly EwmaPoint[] => {
  const lambda = setting.lambda ?? usual.lambda;
  let average = setting.centre;
  let forgotten = 1;
  return values.map((value) => {
    // As a step, so that values equal to the centre leave it exactly there.
    average += lambda * (value - average);
    forgotten *= (1 - lambda) ** 2;
    const { low, high } = limitsWith(setting, 1 - forgotten);
    return { value: average, low, high, signal: average < low || average > high };
  });
};

/** Limits where the average has reached `share` of its settled variance. */
const limitsWith = (setting: EwmaSetting, share: number) => {
  const { centre, deviation, lambda = usual.lambda, width = usual.width } = setting;
  const reach = width * deviation * Math.sqrt((lambda / (2 - lambda)) * share);
  return { low: centre - reach, high: centre + reach };
};
