/** Most triples looked at; the noise of a logger shows in far fewer. */
const mostTriples = 100_000;
/** Share of the largest departures left out: corners of cycles, dips, gaps. */
const trimmed = 0.05;
/** Standard deviation left of a normal one when its outer 5 % are cut: sqrt(1 - 2 z f(z) / 0.95), z = 1.95996. */
const trimmedNormal = 0.87107;

/**
 * Standard deviation of the noise from reading to reading, degC: from second
 * differences (x[i-1] - 2 x[i] + x[i+1]) / sqrt(6), which a steady rise or fall
 * leaves at zero, as the root mean square of the inner 95 %. A median would be
 * zero for readings rounded more coarsely than the noise.
 *
 * Method: difference-based variance (von Neumann et al. 1941 for first
 * differences; second differences as in Gasser, Sroka & Jennen-Steinmetz 1986).
 * 0 for fewer than 3 readings.
 */
export const readingNoise = (celsius: Float64Array): number => {
  const triples = celsius.length - 2;
  if (triples < 1) return 0;
  const stride = Math.max(1, Math.ceil(triples / mostTriples));
  const squares = new Float64Array(Math.ceil(triples / stride));
  for (let pick = 0; pick < squares.length; pick += 1) {
    const index = pick * stride;
    const bend = celsius[index]! - 2 * celsius[index + 1]! + celsius[index + 2]!;
    squares[pick] = (bend * bend) / 6;
  }
  squares.sort();
  const kept = Math.max(1, Math.ceil(squares.length * (1 - trimmed)));
  let sum = 0;
  for (let index = 0; index < kept; index += 1) sum += squares[index]!;
  return Math.sqrt(sum / kept) / (kept < squares.length ? trimmedNormal : 1);
};
