/** What Stirling's formula leaves out of ln Gamma(x), x >= 10 (Abramowitz & Stegun 6.1.40). */
const stirlingRest = (x: number): number => {
  const s = 1 / (x * x);
  const series =
    1 / 12 - s * (1 / 360 - s * (1 / 1260 - s * (1 / 1680 - s * (1 / 1188 - (s * 691) / 360360))));
  return series / x;
};

/**
 * Natural logarithm of the gamma function for x > 0, to about 1e-14: Stirling's
 * series from 10 up, the recurrence below. NaN for x <= 0.
 */
export const logGamma = (x: number): number => {
  if (!(x > 0)) return NaN;
  let product = 1;
  let shifted = x;
  while (shifted < 10) product *= shifted++;
  const stirling = (shifted - 0.5) * Math.log(shifted) - shifted + 0.5 * Math.log(2 * Math.PI);
  return stirling + stirlingRest(shifted) - Math.log(product);
};

/**
 * Natural logarithm of the beta function, a > 0 and b > 0. Where one argument
 * is large the difference of log-gammas is taken term by term, so that it does
 * not cancel (the way of Didonato & Morris 1992).
 */
export const logBeta = (a: number, b: number): number => {
  const large = Math.max(a, b);
  const small = Math.min(a, b);
  if (large < 10) return logGamma(a) + logGamma(b) - logGamma(a + b);
  const sum = large + small;
  const rest = stirlingRest(large) - stirlingRest(sum);
  const powers = (large - 0.5) * Math.log1p(small / large) + small * Math.log(sum) - small;
  return logGamma(small) - powers + rest;
};
