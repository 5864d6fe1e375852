const batchMeans = (values: ArrayLike<number>, batch: number): Float64Array => {
  const means = new Float64Array(Math.floor(values.length / batch));
  for (let k = 0; k < means.length; k++) {
    let sum = 0;
    for (let i = k * batch; i < (k + 1) * batch; i++) sum += values[i]!;
    means[k] = sum / batch;
  }
  return means;
};

/**
 * Where a series has left its start behind: the number of leading readings to
 * drop so that the marginal standard error of the mean of the rest,
 * sum (y - m)^2 / (rest)^2, is least (MSER: White 1997; MSER-5 in batches of
 * five: White, Cobb & Spratt 2000).
 *
 * Returns an index, a multiple of `batch`, searched in the first half only: a
 * minimum in the second half means the series never settled, and one at the
 * very end of the search is to be doubted alike. 0 under two batches.
 */
export const marginalStandardErrorTruncation = (values: ArrayLike<number>, batch = 5): number => {
  const means = batchMeans(values, batch);
  const furthest = Math.floor(means.length / 2);
  let best = 0;
  let least = Infinity;
  let centre = 0;
  let squares = 0;
  // From the end backward, so that mean and squares of the rest are updated (Welford 1962).
  for (let from = means.length - 1; from >= 0; from--) {
    const rest = means.length - from;
    const deviation = means[from]! - centre;
    centre += deviation / rest;
    squares += deviation * (means[from]! - centre);
    if (from > furthest || squares / (rest * rest) > least) continue;
    least = squares / (rest * rest);
    best = from;
  }
  return best * batch;
};
