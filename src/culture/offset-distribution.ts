import { normalCdf, normalDensity } from "../stats/normal.ts";
import type { ThermometerStatement } from "../thermometer/budget.ts";

/**
 * The distribution of what stands between the readings and the truth for the
 * whole hold: a rectangular part (a +-A specification) and a normal part
 * (everything else), convolved.
 */
export interface OffsetDistribution {
  /** Half-width of the rectangular part, degC; 0 for none. */
  readonly halfWidth: number;
  /** Standard deviation of the normal part, degC; 0 for none. */
  readonly standardDeviation: number;
}

/**
 * The offset behind a thermometer and other independent doubts: its +-A
 * specification is the rectangle where that is what is known, else its
 * standard uncertainty joins the others in the normal part (root sum of
 * squares, JCGM 100:2008, 5.1.2).
 *
 * @param others standard uncertainties, degC
 */
export const offsetFrom = (
  { accuracy, standardUncertainty }: ThermometerStatement,
  others: readonly number[],
): OffsetDistribution => ({
  halfWidth: accuracy ?? 0,
  standardDeviation: Math.hypot(accuracy === null ? standardUncertainty : 0, ...others),
});

/** Integral of the standard normal cdf from minus infinity to z. */
const integratedNormalCdf = (z: number): number => {
  if (z === Infinity) return Infinity;
  if (z === -Infinity) return 0;
  return z * normalCdf(z) + normalDensity(z);
};

const uniformCdf = (x: number, halfWidth: number): number =>
  Math.min(1, Math.max(0, (x + halfWidth) / (2 * halfWidth)));

/**
 * Probability that the offset is at most `x` degC.
 *
 * Closed form of the convolution of a rectangle with a normal:
 * s [G((x+a)/s) - G((x-a)/s)] / 2a with G the integral of the normal cdf.
 * With both parts zero it is a step at 0.
 */
export const offsetCdf = (x: number, distribution: OffsetDistribution): number => {
  const { halfWidth: a, standardDeviation: s } = distribution;
  if (x === Infinity) return 1;
  if (x === -Infinity) return 0;
  if (a === 0) return s === 0 ? Number(x >= 0) : normalCdf(x / s);
  // Far narrower than the rectangle, the normal part only rounds its corners, and the
  // difference of two large G's would lose digits.
  if (s < 1e-6 * a) return uniformCdf(x, a);
  const value =
    (s * (integratedNormalCdf((x + a) / s) - integratedNormalCdf((x - a) / s))) / (2 * a);
  return Math.min(1, Math.max(0, value));
};
