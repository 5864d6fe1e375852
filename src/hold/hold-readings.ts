import type { HoldReadings, Phase } from "./hold.ts";
import { cellWeights, gapLimit, usualStep } from "../stats/time-weights.ts";

/** First index whose minute is at least `minute`. */
const firstAtOrAfter = (minutes: Float64Array, minute: number): number => {
  let low = 0;
  let high = minutes.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (minutes[middle]! < minute) low = middle + 1;
    else high = middle;
  }
  return low;
};

/**
 * The readings inside the hold phases, with the minutes each stands for.
 * Disturbances are left out; gaps and the borders of phases end a reading's
 * time. A reading on the border of hold and disturbance goes to the hold.
 *
 * @param phases the whole night's, contiguous and in order
 */
export const pickHoldReadings = (
  minutes: Float64Array,
  celsius: Float64Array,
  phases: readonly Phase[],
): HoldReadings => {
  const limit = gapLimit(usualStep(minutes));
  const parts = phases
    .filter((phase) => phase.kind === "hold")
    .map((phase) => {
      const first = firstAtOrAfter(minutes, phase.fromMinute);
      const after = firstAtOrAfter(minutes, phase.toMinute);
      const last = minutes[after] === phase.toMinute ? after + 1 : after;
      const stretch = { from: phase.fromMinute, to: phase.toMinute };
      return { first, last, weights: cellWeights(minutes, first, last, stretch, limit) };
    });
  return {
    minutes: joined(parts.map(({ first, last }) => minutes.subarray(first, last))),
    celsius: joined(parts.map(({ first, last }) => celsius.subarray(first, last))),
    weights: joined(parts.map(({ weights }) => weights)),
  };
};

const joined = (parts: readonly Float64Array[]): Float64Array => {
  if (parts.length === 1) return parts[0]!.slice();
  const all = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};
