import { logBeta } from "./log-gamma.ts";

const tiny = 1e-300;
const awayFromZero = (value: number): number => (Math.abs(value) < tiny ? tiny : value);

/** Continued fraction of I_x(a, b) (Abramowitz & Stegun 26.5.8) by Lentz's method (1976). */
const continuedFraction = (x: number, a: number, b: number): number => {
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let result = d;
  // The fraction settles in about sqrt(max(a, b)) steps.
  const steps = 300 + 20 * Math.sqrt(Math.max(a, b));
  for (let m = 1; m <= steps; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / awayFromZero(1 + even * d);
    c = awayFromZero(1 + even / c);
    result *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / awayFromZero(1 + odd * d);
    c = awayFromZero(1 + odd / c);
    result *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return result;
};

const logOf = (value: number, complement: number): number =>
  complement < 0.5 ? Math.log1p(-complement) : Math.log(value);

/**
 * Regularised incomplete beta function I_x(a, b), 0 <= x <= 1, a > 0, b > 0.
 * `complement` is 1 - x: give it where it is known better than by subtraction.
 * NaN outside.
 */
export const incompleteBeta = (
  x: number,
  a: number,
  b: number,
  complement: number = 1 - x,
): number => {
  if (!(x >= 0 && complement >= 0 && a > 0 && b > 0)) return NaN;
  if (x === 0) return 0;
  if (complement === 0) return 1;
  const logFront = a * logOf(x, complement) + b * logOf(complement, x) - logBeta(a, b);
  const front = Math.exp(logFront);
  return x < (a + 1) / (a + b + 2)
    ? (front * continuedFraction(x, a, b)) / a
    : 1 - (front * continuedFraction(complement, b, a)) / b;
};
