import type { Hold, HoldReadings } from "../hold/hold.ts";
import { fastResidual, type FastResidual } from "./fast-residual.ts";
import { predictSlowChange, type SlowBlocks, type SlowFit } from "./slow-change.ts";

interface FastEvidence {
  readonly hold: Hold;
  readonly readings: HoldReadings;
  readonly resolution: number;
}

/**
 * What is left of a test's readings when its slow part is taken away, as `count`
 * equally likely values (see fastResidual).
 */
export const fastPart = (
  fit: SlowFit,
  blocks: SlowBlocks,
  { hold, readings, resolution }: FastEvidence,
  count: number,
): FastResidual => {
  const { means } = predictSlowChange(fit, blocks, blocks.hours);
  const residuals = new Float64Array(readings.celsius.length);
  let block = 0;
  for (let i = 0; i < residuals.length; i += 1) {
    const hour = (readings.minutes[i]! - hold.fromMinute) / 60;
    while (block < means.length - 2 && hour > blocks.hours[block + 1]!) block += 1;
    residuals[i] = readings.celsius[i]! - between(blocks.hours, means, block, hour);
  }
  return fastResidual(residuals, readings, hold, resolution, count);
};

/** Linear interpolation between block `index` and the next; the end blocks' levels go on outside. */
const between = (x: Float64Array, y: Float64Array, index: number, at: number): number => {
  if (x.length === 1) return y[0]!;
  const share = (at - x[index]!) / (x[index + 1]! - x[index]!);
  return y[index]! + Math.min(1, Math.max(0, share)) * (y[index + 1]! - y[index]!);
};
