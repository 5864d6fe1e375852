import type { Points } from "./grid.ts";
import { usualStep, gapLimit, cellWeights } from "../stats/time-weights.ts";
import type { Stretch } from "../stats/time-weights.ts";

/** Width of the window of temperature in which the most time is looked for, degC. */
const windowWidth = 1;
const binWidth = 0.1;

/**
 * First guess of the hold: the temperature, above `floor`, within half a
 * degree of which the log spends the most time (its half-sample mode with a
 * fixed window), and the stretch from the first to the last time it is
 * reached. A hold is where a night spends its hours; warm-up and cool-down
 * pass through.
 *
 * @returns null when nothing lies above `floor`
 */
export const findCore = (
  points: Points,
  floor: number,
): (Stretch & { readonly level: number }) | null => {
  const { minutes, celsius } = points;
  const size = minutes.length;
  const span = { from: minutes[0]!, to: minutes[size - 1]! };
  const weights = cellWeights(minutes, 0, size, span, gapLimit(usualStep(minutes)));
  const level = busiestTemperature(celsius, weights, floor);
  if (level === null) return null;
  let first = -1;
  let last = -1;
  for (let index = 0; index < size; index += 1) {
    if (celsius[index]! < level - windowWidth / 2) continue;
    if (first < 0) first = index;
    last = index;
  }
  return first < 0 ? null : { from: minutes[first]!, to: minutes[last]!, level };
};

const busiestTemperature = (
  celsius: Float64Array,
  weights: Float64Array,
  floor: number,
): number | null => {
  let top = -Infinity;
  for (const value of celsius) top = Math.max(top, value);
  if (!(top >= floor)) return null;
  const bins = new Float64Array(Math.min(5000, Math.floor((top - floor) / binWidth) + 1));
  celsius.forEach((value, index) => {
    if (value < floor) return;
    const bin = Math.min(bins.length - 1, Math.floor((value - floor) / binWidth));
    bins[bin]! += weights[index]!;
  });
  return floor + busiestWindow(bins) * binWidth;
};

/** Centre, in bins, of the window with the most time; the middle of them where several are alike. */
const busiestWindow = (bins: Float64Array): number => {
  const width = Math.round(windowWidth / binWidth);
  let time = 0;
  let best = -1;
  let centre = 0;
  for (let end = 0; end < bins.length + width; end += 1) {
    time += (bins[end] ?? 0) - (bins[end - width] ?? 0);
    if (time > best + 1e-9) {
      best = time;
      centre = end + 1 - width / 2;
    }
  }
  return centre;
};
