/**
 * Sum by Neumaier's compensated summation (Neumaier 1974), so that long series
 * of nearly equal readings lose no digits.
 */
export const compensatedSum = (values: ArrayLike<number>): number => {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return sum + lost;
};

/** Arithmetic mean, in the unit of the values, to the last digit. NaN when there are none. */
export const mean = (values: ArrayLike<number>): number => compensatedSum(values) / values.length;

/**
 * Standard deviation with n - 1 (JCGM 100, 4.2.2), in the unit of the values,
 * by the corrected two-pass formula (Chan, Golub & LeVeque 1983, eq. 1.7).
 * NaN under two values.
 */
export const standardDeviation = (values: ArrayLike<number>): number => {
  const n = values.length;
  if (n < 2) return NaN;
  const centre = mean(values);
  let squares = 0;
  let rest = 0;
  for (let i = 0; i < n; i++) {
    const deviation = values[i]! - centre;
    squares += deviation * deviation;
    rest += deviation;
  }
  return Math.sqrt(Math.max(0, squares - (rest * rest) / n) / (n - 1));
};

/**
 * Lag-one autocorrelation as NIST StRD defines it:
 * sum (y_i - m)(y_{i+1} - m) / sum (y_i - m)^2. NaN under two values or where
 * all are equal.
 */
export const lagOneAutocorrelation = (values: ArrayLike<number>): number => {
  const n = values.length;
  if (n < 2) return NaN;
  const centre = mean(values);
  let products = 0;
  let squares = 0;
  let previous = 0;
  for (let i = 0; i < n; i++) {
    const deviation = values[i]! - centre;
    products += previous * deviation;
    squares += deviation * deviation;
    previous = deviation;
  }
  return squares > 0 ? products / squares : NaN;
};
