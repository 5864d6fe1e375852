import { medianAbsoluteDeviation, scaledMad } from "./median.ts";
import { type Running, partition, runningSums, scatter } from "./partition.ts";
import { standardDeviation } from "./summary.ts";

/** Series longer than this are first averaged in blocks, and each change then placed exactly. */
const mostBlocks = 4096;

/** Noise from first differences, which a few level changes do not disturb. */
const noiseOf = (values: ArrayLike<number>): number => {
  const differences = new Float64Array(Math.max(0, values.length - 1));
  for (let i = 0; i < differences.length; i++) differences[i] = values[i + 1]! - values[i]!;
  const robust = (scaledMad * medianAbsoluteDeviation(differences)) / Math.SQRT2;
  // Quantised readings that rarely move have a median difference of zero.
  return robust > 0 ? robust : standardDeviation(differences) / Math.SQRT2;
};

const averageBlocks = (values: ArrayLike<number>, size: number): Float64Array => {
  const means = new Float64Array(Math.floor(values.length / size));
  for (let i = 0; i < means.length * size; i++) means[Math.floor(i / size)]! += values[i]! / size;
  return means;
};

const bestSplit = (
  running: Running,
  bounds: { readonly from: number; readonly to: number },
  near: { readonly from: number; readonly to: number },
): number => {
  let split = near.from;
  let least = Infinity;
  for (let at = near.from; at <= near.to; at++) {
    const cost = scatter(running, bounds.from, at) + scatter(running, at, bounds.to);
    if (cost < least) {
      least = cost;
      split = at;
    }
  }
  return split;
};

/** Moves each change, right to about `reach`, to the reading that splits its neighbourhood best. */
const place = (running: Running, changes: readonly number[], reach: number): number[] => {
  const n = running.sums.length - 1;
  const placed: number[] = [];
  changes.forEach((change, k) => {
    const from = placed[k - 1] ?? 0;
    const to = changes[k + 1] ?? n;
    const near = { from: Math.max(from + 1, change - reach), to: Math.min(to - 1, change + reach) };
    placed.push(bestSplit(running, { from, to }, near));
  });
  return placed;
};

/** What the cost falls by the k-th change. */
const gainOf = (running: Running, changes: readonly number[], k: number): number => {
  const from = changes[k - 1] ?? 0;
  const at = changes[k]!;
  const to = changes[k + 1] ?? running.sums.length - 1;
  return scatter(running, from, to) - scatter(running, from, at) - scatter(running, at, to);
};

/** Drops the weakest change until all are worth the penalty: a block across a step leaves two. */
const dropWeak = (running: Running, changes: readonly number[], penalty: number): number[] => {
  const kept = [...changes];
  while (kept.length > 0) {
    const gains = kept.map((_, k) => gainOf(running, kept, k));
    const weakest = gains.reduce((least, gain, k) => (gain < gains[least]! ? k : least), 0);
    if (gains[weakest]! >= penalty) break;
    kept.splice(weakest, 1);
  }
  return kept;
};

/** From changes known to the block to changes known to the reading. */
const refine = (
  values: ArrayLike<number>,
  blocks: readonly number[],
  size: number,
  penalty: number,
): number[] => {
  const running = runningSums(values);
  const start = blocks.map((block) => block * size);
  const placed = place(running, start, size);
  return place(running, dropWeak(running, placed, penalty), size);
};

/**
 * Where the level of a series changes: indices at which a new stretch begins,
 * in order, none where there is no change. Optimal partitioning of the squared
 * deviations from each stretch's mean with pruning (PELT: Killick, Fearnhead &
 * Eckley 2012), in units of the noise variance, which is estimated from first
 * differences.
 *
 * `penalty` is the fall in cost a change must bring, 3 ln n unless told;
 * readings that wander (autocorrelated) need more. `minLength` is the shortest
 * stretch, 2 readings unless told. Over 4,096 readings the search runs on
 * block means, then each change is placed to the reading: stretches shorter
 * than n/2,048 can be missed, and time stays linear. Empty under 2 minLength.
 */
export const changePoints = (
  values: ArrayLike<number>,
  penalty?: number,
  minLength = 2,
): number[] => {
  const n = values.length;
  if (n < 2 * minLength) return [];
  const size = Math.ceil(n / mostBlocks);
  const blocks = size === 1 ? values : averageBlocks(values, size);
  const variance = noiseOf(blocks) ** 2;
  if (!(variance > 0)) return [];
  const shortest = Math.max(1, Math.ceil(minLength / size));
  const cost = (penalty ?? 3 * Math.log(n)) * variance;
  const changes = partition(blocks, cost, shortest);
  return size === 1 ? changes : refine(values, changes, size, cost * size);
};
