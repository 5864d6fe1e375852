import { makeFft, nextPowerOfTwo } from "./fft.ts";
import { mean } from "./summary.ts";

/** Up to this many lags adding products directly is quicker than transforms. */
const mostDirectLags = 64;

const directProducts = (deviations: Float64Array, maxLag: number): Float64Array => {
  const sums = new Float64Array(maxLag + 1);
  for (let lag = 0; lag <= maxLag; lag++) {
    let sum = 0;
    for (let i = lag; i < deviations.length; i++) sum += deviations[i]! * deviations[i - lag]!;
    sums[lag] = sum;
  }
  return sums;
};

/**
 * Lagged products by transforms of pieces, so that memory follows the number
 * of lags and not the series: piece a (real part) against the same piece with
 * `maxLag` more readings (imaginary part), spectra conj(A) B summed.
 */
const transformedProducts = (deviations: Float64Array, maxLag: number): Float64Array => {
  const size = nextPowerOfTwo(Math.min(4 * (maxLag + 1), deviations.length + maxLag + 1));
  const piece = size - maxLag;
  const transform = makeFft(size);
  const sum = { real: new Float64Array(size), imaginary: new Float64Array(size) };
  const real = new Float64Array(size);
  const imaginary = new Float64Array(size);
  for (let from = 0; from < deviations.length; from += piece) {
    real.fill(0).set(deviations.subarray(from, from + piece));
    imaginary.fill(0).set(deviations.subarray(from, from + size));
    transform(real, imaginary);
    addCrossSpectrum(real, imaginary, sum);
  }
  transform(sum.imaginary, sum.real);
  return sum.real.slice(0, maxLag + 1).map((value) => value / size);
};

const addCrossSpectrum = (
  real: Float64Array,
  imaginary: Float64Array,
  sum: { real: Float64Array; imaginary: Float64Array },
): void => {
  const size = real.length;
  for (let k = 0; k < size; k++) {
    const m = (size - k) & (size - 1);
    // The transforms of the two real series, taken apart.
    const aRe = (real[k]! + real[m]!) / 2;
    const aIm = (imaginary[k]! - imaginary[m]!) / 2;
    const bRe = (imaginary[k]! + imaginary[m]!) / 2;
    const bIm = (real[m]! - real[k]!) / 2;
    sum.real[k]! += aRe * bRe + aIm * bIm;
    sum.imaginary[k]! += aRe * bIm - aIm * bRe;
  }
};

/**
 * Autocorrelations r_0 = 1 to r_maxLag, sum (y_i - m)(y_{i+k} - m) divided by
 * sum (y_i - m)^2 (Box & Jenkins; NIST e-Handbook 1.3.5.12). Evenly spaced
 * readings are taken for granted. Time n log(maxLag). `maxLag` is cut to
 * n - 1; NaN beyond r_0 where all values are equal; empty for no values.
 */
export const autocorrelations = (values: ArrayLike<number>, maxLag: number): Float64Array => {
  const n = values.length;
  if (n === 0) return new Float64Array(0);
  const centre = mean(values);
  const deviations = new Float64Array(n);
  for (let i = 0; i < n; i++) deviations[i] = values[i]! - centre;
  const lags = Math.max(0, Math.min(Math.floor(maxLag), n - 1));
  const products =
    lags <= mostDirectLags
      ? directProducts(deviations, lags)
      : transformedProducts(deviations, lags);
  const scale = products[0]!;
  return products.map((product, lag) => (lag === 0 ? 1 : scale > 0 ? product / scale : NaN));
};

/** Sum of the initial positive, never rising pair sums; null where they run past the lags given. */
const initialSequence = (r: Float64Array, complete: boolean): number | null => {
  let sum = 0;
  let smallest = Infinity;
  for (let k = 0; k + 1 < r.length; k += 2) {
    const pair = r[k]! + r[k + 1]!;
    if (!(pair > 0)) return sum;
    smallest = Math.min(smallest, pair);
    sum += smallest;
  }
  return complete ? sum : null;
};

/**
 * Integrated autocorrelation time 1 + 2 sum r_k, in readings: the factor by
 * which the variance of the mean exceeds that of independent readings.
 *
 * The sum stops by Geyer's (1992) initial monotone positive sequence: pairs
 * r_2k + r_2k+1 are added while positive and never rising. For a regular
 * swing this overstates the time, which errs to the careful side; a trend must be
 * taken out first. 1 where all values are equal or there are under 3; never below 1/n.
 */
export const integratedAutocorrelationTime = (values: ArrayLike<number>): number => {
  const n = values.length;
  if (n < 3) return 1;
  for (let lags = mostDirectLags - 1; ; lags = lags * 4 + 3) {
    const r = autocorrelations(values, lags);
    if (Number.isNaN(r[1]!)) return 1;
    const sum = initialSequence(r, lags >= n - 1);
    if (sum !== null) return Math.max(2 * sum - 1, 1 / n);
  }
};

/**
 * How many independent readings these autocorrelated ones are worth for their
 * mean: n / integrated autocorrelation time, kept within 1 to n, so that
 * alternating readings are not credited as more than they are.
 */
export const effectiveSampleSize = (values: ArrayLike<number>): number => {
  const n = values.length;
  return n === 0 ? 0 : Math.min(n, Math.max(1, n / integratedAutocorrelationTime(values)));
};
