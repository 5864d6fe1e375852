import type { Series } from "../readings/series.ts";
import { weightedMean } from "../stats/weighted.ts";
import { gapLimit, usualStep } from "../stats/time-weights.ts";
import { type Span, timeWeights, within } from "./course.ts";

/** What is known of the room: a probe's readings, corrected, or a range somebody stated, degC. */
export type RoomKnowledge = Series | { readonly low: number; readonly high: number };

export const isMeasured = (room: RoomKnowledge): room is Series => "celsius" in room;

export interface RoomLevel {
  readonly mean: number;
  readonly standardUncertainty: number;
  readonly from: "measured" | "stated";
}

/**
 * The room over the hold: a probe's time-weighted mean with its thermometer's
 * standard uncertainty, or the middle of a stated range with width / sqrt(12)
 * (rectangular, JCGM 100, 4.3.7), degC.
 *
 * @returns null where nothing is known, or the probe has no reading in the hold
 */
export const roomLevel = (
  room: RoomKnowledge | null,
  hold: Span,
  thermometer: number,
): RoomLevel | null => {
  if (room === null) return null;
  if (!isMeasured(room)) {
    const width = room.high - room.low;
    return {
      mean: room.low + width / 2,
      standardUncertainty: width / Math.sqrt(12),
      from: "stated",
    };
  }
  const { minutes, celsius } = within(room, hold);
  if (minutes.length === 0) return null;
  const weights = minutes.length === 1 ? [1] : timeWeights(minutes, gapLimit(usualStep(minutes)));
  return {
    mean: weightedMean(celsius, weights),
    standardUncertainty: Math.hypot(thermometer, room.resolution / Math.sqrt(12)),
    from: "measured",
  };
};
