import type { Hold } from "../hold/hold.ts";
import type { HeldEvidence } from "./hold-plays.ts";
import type { ScenarioPlay } from "./probability.ts";

/** A test's night as it would have been at another level: every temperature of it moved by `by` degC. */
export const shiftedEvidence = (evidence: HeldEvidence, by: number): HeldEvidence => {
  if (by === 0) return evidence;
  const { night } = evidence;
  const hold = shiftedHold(evidence.hold, by);
  const readings = {
    ...evidence.readings,
    celsius: evidence.readings.celsius.map((value) => value + by),
  };
  const peak = night.peak === null ? null : night.peak + by;
  return {
    ...evidence,
    hold,
    readings,
    night: { ...night, hold, holdReadings: readings, peak },
  };
};

const shiftedHold = (hold: Hold, by: number): Hold => ({
  ...hold,
  mean: hold.mean + by,
  median: hold.median + by,
  min: hold.min + by,
  max: hold.max + by,
  band: { low: hold.band.low + by, high: hold.band.high + by },
  hourMeans: { low: hold.hourMeans.low + by, high: hold.hourMeans.high + by },
});

/** Scenarios moved up by `by` degC allow the offset to be that much lower. */
export const shiftedPlays = (
  plays: readonly ScenarioPlay[],
  by: number,
): readonly ScenarioPlay[] =>
  by === 0
    ? plays
    : plays.map(({ intervals, belowCeiling }) => ({
        intervals: intervals.map(({ from, to }) => ({ from: from - by, to: to - by })),
        belowCeiling: belowCeiling - by,
      }));
