const rootTwoPi = Math.sqrt(2 * Math.PI);

/** exp(-z^2/2) without the rounding of z^2: z is split as Cody (1969) does for erfc. */
const bell = (z: number): number => {
  const coarse = Math.trunc(z * 16) / 16;
  return Math.exp((-coarse * coarse) / 2) * Math.exp((-(z - coarse) * (z + coarse)) / 2);
};

/** Density of the standard normal distribution at `z`. */
export const normalDensity = (z: number): number => (Math.abs(z) > 39 ? 0 : bell(z) / rootTwoPi);

/** (Phi(z) - 1/2) / density: z + z^3/3 + z^5/15 + ... (Abramowitz & Stegun 26.2.11). */
const centralSeries = (z: number): number => {
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > Math.abs(sum) * 1e-17; k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return sum;
};

/** Q(z) / density for z > 2 by Laplace's continued fraction (A&S 26.2.14), from the far end. */
const tailFraction = (z: number): number => {
  const depth = 16 + Math.ceil(480 / (z * z));
  let below = z;
  for (let k = depth; k >= 1; k--) below = z + k / below;
  return 1 / below;
};

/**
 * Standard normal distribution function: share of a normal distribution below
 * `z` standard deviations. About 1e-14 relative in either tail.
 */
export const normalCdf = (z: number): number => {
  if (Number.isNaN(z)) return NaN;
  if (z > 2) return 1 - normalCdf(-z);
  if (z < -39) return 0;
  return z < -2 ? normalDensity(z) * tailFraction(-z) : 0.5 + normalDensity(z) * centralSeries(z);
};

const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

// prettier-ignore
const central = [
  [3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946,
   45921.95393154987, 67265.7709270087, 33430.57558358813, 2509.0809287301227],
  [1, 42.31333070160091, 687.1870074920579, 5394.196021424751,
   21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854],
] as const;
// prettier-ignore
const middle = [
  [1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045,
   1.2704582524523684, 0.2417807251774506, 0.022723844989269184, 0.0007745450142783414],
  [1, 2.053191626637759, 1.6763848301838038, 0.6897673349851,
   0.14810397642748008, 0.015198666563616457, 0.0005475938084995345, 1.0507500716444169e-09],
] as const;
// prettier-ignore
const far = [
  [6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487,
   0.026532189526576124, 0.0012426609473880784, 2.7115555687434876e-05, 2.0103343992922881e-07],
  [1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615,
   0.0007868691311456133, 1.8463183175100548e-05, 1.421511758316446e-07, 2.0442631033899397e-15],
] as const;

const ratio = (
  [above, below]: readonly [readonly number[], readonly number[]],
  x: number,
): number => polynomial(above, x) / polynomial(below, x);

/**
 * Standard normal quantile: the z below which the share `p` lies. Wichura
 * 1988, algorithm AS 241 (PPND16), about 1e-15 relative. -Infinity at 0,
 * Infinity at 1, NaN outside.
 */
export const normalQuantile = (p: number): number => {
  if (!(p >= 0 && p <= 1)) return NaN;
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(central, 0.180625 - q * q);
  const tail = Math.min(p, 1 - p);
  if (tail === 0) return q < 0 ? -Infinity : Infinity;
  const r = Math.sqrt(-Math.log(tail));
  const z = r <= 5 ? ratio(middle, r - 1.6) : ratio(far, r - 5);
  return q < 0 ? -z : z;
};
