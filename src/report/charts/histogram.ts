/** Time spent at each temperature, for drawing: bars of equal, round width. */
import { roundStep, stretchOf } from "./scale-range.ts";

export interface Bar {
  readonly low: number;
  readonly high: number;
  readonly minutes: number;
}

/** `values` in the drawn unit with the minutes each stands for; at most `most` bars. */
export const timeAtTemperature = (
  values: Float64Array,
  weights: Float64Array,
  most: number,
  leastWidth: number,
): readonly Bar[] => {
  if (values.length === 0) return [];
  const { low, high } = stretchOf(values, []);
  const width = Math.max(roundStep(high - low || leastWidth, most), roundStep(leastWidth, 1));
  const first = Math.floor(low / width + 1e-9);
  const totals = new Float64Array(Math.floor(high / width + 1e-9) - first + 1);
  for (let index = 0; index < values.length; index += 1) {
    const bar = Math.floor(values[index]! / width + 1e-9) - first;
    totals[bar] = totals[bar]! + weights[index]!;
  }
  return Array.from(totals, (minutes, index) => ({
    low: (first + index) * width,
    high: (first + index + 1) * width,
    minutes,
  }));
};
