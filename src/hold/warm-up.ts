import { fitCurve } from "../stats/curve-fit.ts";
import { fitLine } from "../stats/line-fit.ts";
import type { Points } from "./grid.ts";
import type { WarmUp } from "./hold.ts";

/** Fewest points for three parameters and something left to judge by. */
const fewestPoints = 8;
const mostFitted = 200;
/** The exponential must leave no more than this share of the rise (root mean square), or twice the noise. */
const unexplained = 0.015;
/** And at most this share of what a straight ramp leaves. */
const betterThanRamp = 0.5;

/**
 * Warm-up from the start of heating to the start of the hold, with the time
 * constant of y = a - b e^(-t/tau) (Levenberg-Marquardt, with covariance)
 * where the rise is such an approach: the residuals are small against the rise
 * or within twice the noise, clearly smaller than those of a straight ramp,
 * and tau is shorter than three times the warm-up. A thermostat's ramp or a
 * jar's S-shaped start fails this and the time constant is null.
 *
 * @param heatingStart minutes, null when the log has no rise
 * @param noise reading noise, degC
 */
export const describeWarmUp = (
  points: Points,
  heatingStart: number | null,
  holdStart: number,
  noise: number,
): WarmUp | null => {
  if (heatingStart === null || holdStart <= heatingStart) return null;
  const fit = fitExponential(points, heatingStart, holdStart, noise);
  return {
    minutesToHold: holdStart - heatingStart,
    timeConstantMinutes: fit?.value ?? null,
    timeConstantUncertainty: fit?.uncertainty ?? null,
  };
};

const exponential = (p: readonly number[], x: number): number =>
  p[0]! - p[1]! * Math.exp(-x / p[2]!);

const fitExponential = (
  points: Points,
  from: number,
  to: number,
  noise: number,
): { value: number; uncertainty: number } | null => {
  const { x, y } = pick(points, from, to);
  if (x.length < fewestPoints) return null;
  const rise = y[y.length - 1]! - y[0]!;
  const length = x[x.length - 1]!;
  const start = [y[y.length - 1]! + 0.05 * rise, 1.05 * rise, length / 3];
  const fit = fitCurve({ model: exponential, x, y, start, maxIterations: 60 });
  if (fit === null || !fit.converged) return null;
  const value = fit.parameters[2]!;
  const left = fit.residualStandardDeviation;
  const small = left <= Math.max(unexplained * Math.abs(rise), 2 * noise);
  const better = left <= betterThanRamp * fitLine(x, y).residualStandardDeviation;
  if (!small || !better || !(value > 0) || value > 3 * length) return null;
  return { value, uncertainty: fit.standardUncertainties[2]! };
};

const pick = (points: Points, from: number, to: number): { x: Float64Array; y: Float64Array } => {
  const inside: number[] = [];
  points.minutes.forEach((minute, index) => {
    if (minute >= from && minute <= to) inside.push(index);
  });
  const stride = Math.max(1, Math.ceil(inside.length / mostFitted));
  const picked = inside.filter((_, index) => index % stride === 0);
  return {
    x: Float64Array.from(picked, (index) => points.minutes[index]! - from),
    y: Float64Array.from(picked, (index) => points.celsius[index]!),
  };
};
