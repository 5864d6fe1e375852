/**
 * 1 / normalQuantile(0.75): turns a median absolute deviation into an estimate
 * of a normal standard deviation.
 */
export const scaledMad = 1.482602218505602;

/** Puts the `rank`-th smallest value (0-based) in its place, smaller ones before it. */
const select = (values: Float64Array, rank: number, from: number, to: number): number => {
  let low = from;
  let high = to;
  while (low < high) {
    const pivot = medianOfThree(values[low]!, values[(low + high) >>> 1]!, values[high]!);
    let i = low;
    let j = high;
    // Stopping at values equal to the pivot keeps quantised readings linear.
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const kept = values[i]!;
      values[i++] = values[j]!;
      values[j--] = kept;
    }
    if (rank <= j) high = j;
    else if (rank >= i) low = i;
    else return values[rank]!;
  }
  return values[rank]!;
};

const medianOfThree = (a: number, b: number, c: number): number =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));

/** Median of a scratch array, whose order is lost. */
export const medianInPlace = (values: Float64Array): number => {
  const n = values.length;
  if (n === 0) return NaN;
  const middle = n >>> 1;
  const upper = select(values, middle, 0, n - 1);
  if (n % 2 === 1) return upper;
  let lower = values[0]!;
  for (let i = 1; i < middle; i++) if (values[i]! > lower) lower = values[i]!;
  return lower + (upper - lower) / 2;
};

/**
 * Median, in the unit of the values: the middle one, or the mean of the two
 * middle ones. Linear on average, by quickselect (Hoare 1961). NaN when there
 * are no values; the values must not hold NaN.
 */
export const median = (values: ArrayLike<number>): number =>
  medianInPlace(Float64Array.from(values));

/**
 * Median of the absolute deviations from `centre` (the median unless told),
 * in the unit of the values, not scaled: multiply by `scaledMad` for a robust
 * standard deviation. NaN when there are no values.
 */
export const medianAbsoluteDeviation = (
  values: ArrayLike<number>,
  centre: number = median(values),
): number => {
  const deviations = new Float64Array(values.length);
  for (let i = 0; i < deviations.length; i++) deviations[i] = Math.abs(values[i]! - centre);
  return medianInPlace(deviations);
};
