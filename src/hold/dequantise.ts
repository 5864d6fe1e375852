/**
 * Takes the steps of rounding out of a slow course: where the readings stand
 * still and then move by one step, the temperature was half-way between at the
 * moment of the change. Between two such moments the course is taken as
 * straight; a run that returns to where it came from stays flat.
 *
 * Matters for coarse loggers (0.5 degC) and slow jars: rounded readings enter
 * any band half a step early. Changes of more than 1.5 steps are real moves and
 * keep their corners.
 *
 * @param celsius readings, degC
 * @param resolution smallest step between readings, degC; 0 where unknown
 */
export const dequantised = (celsius: Float64Array, resolution: number): Float64Array => {
  const smooth = celsius.slice();
  if (!(resolution > 0)) return smooth;
  const last = celsius.length - 1;
  let first = 0;
  while (first <= last) {
    let end = first;
    while (end < last && celsius[end + 1] === celsius[first]) end += 1;
    const value = celsius[first]!;
    const before = first > 0 ? edge(celsius[first - 1]!, value, resolution) : value;
    const after = end < last ? edge(value, celsius[end + 1]!, resolution) : value;
    fillRun(smooth, first, end, value, before, after);
    first = end + 1;
  }
  return smooth;
};

/** Temperature at the change from one reading to the next, as an offset side: half-way, or the corner kept. */
const edge = (from: number, to: number, resolution: number): number =>
  Math.abs(to - from) <= 1.5 * resolution ? (from + to) / 2 : NaN;

const fillRun = (
  smooth: Float64Array,
  first: number,
  end: number,
  value: number,
  before: number,
  after: number,
): void => {
  const passing = (before - value) * (after - value) < 0;
  if (!passing) return;
  const length = end - first + 1;
  for (let index = first; index <= end; index += 1) {
    smooth[index] = before + ((after - before) * (index - first + 0.5)) / length;
  }
};
