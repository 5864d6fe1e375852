import type { Hold, HoldReadings } from "../hold/hold.ts";
import { median } from "../stats/median.ts";
import type { SlowBlocks } from "./slow-change.ts";

const shortestBlockMinutes = 20;
const mostBlocks = 40;
/** Least weight of a block, against the usual one. */
const leastBlockShare = 0.25;

/**
 * Cuts the hold into blocks of whole thermostat cycles and takes their means,
 * so that what is left varies slowly.
 *
 * Each mean carries the variance of the readings' scatter about it, shared
 * among the block's independent readings, and the display's step.
 */
export const slowBlocks = (hold: Hold, readings: HoldReadings, resolution: number): SlowBlocks => {
  const width = blockMinutes(hold, readings);
  const sums = fullBlocks(sumBlocks(readings, hold.fromMinute, width));
  const hours: number[] = [];
  const means: number[] = [];
  const variances: number[] = [];
  const floor = Math.max(resolution ** 2 / 12, 1e-4);
  for (const block of sums) {
    const mean = block.value / block.weight;
    hours.push((block.minute / block.weight - hold.fromMinute) / 60);
    means.push(mean);
    variances.push(scatterOfMean(block, hold, width) + floor);
  }
  return {
    hours: Float64Array.from(hours),
    means: Float64Array.from(means),
    variances: Float64Array.from(variances),
  };
};

const blockMinutes = (hold: Hold, readings: HoldReadings): number => {
  const span = hold.toMinute - hold.fromMinute;
  const step = span / Math.max(1, readings.minutes.length);
  const wanted = Math.max(shortestBlockMinutes, span / mostBlocks, Math.min(step, span / 4));
  const period = hold.swing?.periodMinutes ?? 0;
  return period > 0 ? Math.ceil(wanted / period) * period : wanted;
};

interface BlockSum {
  weight: number;
  value: number;
  minute: number;
  count: number;
}

const sumBlocks = (readings: HoldReadings, start: number, width: number): BlockSum[] => {
  const blocks: BlockSum[] = [];
  for (let i = 0; i < readings.minutes.length; i += 1) {
    const index = Math.max(0, Math.floor((readings.minutes[i]! - start) / width));
    const block = (blocks[index] ??= { weight: 0, value: 0, minute: 0, count: 0 });
    const weight = Math.max(readings.weights[i]!, 1e-9);
    block.weight += weight;
    block.value += weight * readings.celsius[i]!;
    block.minute += weight * readings.minutes[i]!;
    block.count += 1;
  }
  return blocks.filter((block) => block !== undefined);
};

/** Leaves out scraps of blocks beside a gap or a disturbance: a reading or two there says little and may mislead. */
const fullBlocks = (blocks: readonly BlockSum[]): readonly BlockSum[] => {
  const usual = median(blocks.map(({ weight }) => weight));
  return blocks.filter(({ weight }) => weight >= leastBlockShare * usual);
};

/** Variance of a block's mean: a full cycle leaves only noise, a lone reading the whole swing. */
const scatterOfMean = (block: BlockSum, hold: Hold, width: number): number => {
  const noise = hold.noise ** 2 / block.count;
  if (hold.swing === null) return noise;
  const wholeCycles = (12 * width) / hold.swing.periodMinutes;
  const swingVariance = hold.swing.peakToPeak ** 2 / 8;
  return noise + (swingVariance / block.count) * (block.count >= wholeCycles ? 0.1 : 1);
};
