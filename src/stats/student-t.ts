import { incompleteBeta } from "./incomplete-beta.ts";
import { logBeta } from "./log-gamma.ts";
import { normalCdf, normalQuantile } from "./normal.ts";

/** From here on the expansion below beats the incomplete beta function, which starts to cancel. */
const manyDegrees = 1000;

/** The normal deviate with the same tail as t (Hill 1970, algorithm 395), error of order df^-6. */
const normalDeviate = (t: number, df: number): number => {
  if (df === Infinity) return t;
  const a = df - 0.5;
  const b = 48 * a * a;
  const y = a * Math.log1p((t * t) / df);
  const third = (((-0.4 * y - 3.3) * y - 24) * y - 85.5) / (0.8 * y * y + 100 + b);
  return Math.sqrt(y) * (1 + (third + y + 3) / b);
};

/** P(T < -t), t >= 0. */
const lowerTail = (t: number, df: number): number => {
  if (df >= manyDegrees) return normalCdf(-normalDeviate(t, df));
  const square = t * t;
  if (square === Infinity) return 0;
  const share = df / (df + square);
  return 0.5 * incompleteBeta(share, df / 2, 0.5, square / (df + square));
};

/** Density of Student's t. */
const density = (t: number, df: number): number =>
  Math.exp(-0.5 * (df + 1) * Math.log1p((t * t) / df) - 0.5 * Math.log(df) - logBeta(df / 2, 0.5));

/**
 * Distribution function of Student's t with `df` > 0 degrees of freedom, which
 * need not be whole and may be Infinity (normal). By the incomplete beta
 * function (Abramowitz & Stegun 26.7.1), from 1000 degrees of freedom by Hill's
 * (1970) expansion; about 1e-12 relative. NaN for df <= 0.
 */
export const studentTCdf = (t: number, df: number): number => {
  if (!(df > 0) || Number.isNaN(t)) return NaN;
  return t <= 0 ? lowerTail(-t, df) : 1 - lowerTail(t, df);
};

/** The t > 0 with lower tail `p` < 1/2: Newton steps kept inside a bracket. */
const upperQuantile = (p: number, df: number): number => {
  let low = 0;
  let high = 2;
  while (lowerTail(high, df) > p && high < Infinity) {
    low = high;
    high *= 2;
  }
  let t = Math.min(Math.max(-normalQuantile(p), low), high);
  for (let step = 0; step < 200; step++) {
    const excess = lowerTail(t, df) - p;
    if (excess === 0) return t;
    if (excess > 0) low = t;
    else high = t;
    const newton = t + excess / density(t, df);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - t) <= 1e-15 * t) return next;
    t = next;
  }
  return t;
};

/**
 * Quantile of Student's t: the value below which the share `p` lies, `df` > 0
 * degrees of freedom, not necessarily whole, Infinity for normal. About 1e-12
 * relative. -Infinity at 0, Infinity at 1, NaN outside.
 */
export const studentTQuantile = (p: number, df: number): number => {
  if (!(df > 0) || !(p >= 0 && p <= 1)) return NaN;
  if (df === Infinity) return normalQuantile(p);
  if (p === 0.5) return 0;
  if (p === 0 || p === 1) return p === 0 ? -Infinity : Infinity;
  return p < 0.5 ? -upperQuantile(p, df) : upperQuantile(1 - p, df);
};
