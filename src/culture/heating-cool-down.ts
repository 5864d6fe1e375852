import { forecast } from "./cooling-forecast.ts";
import { guardedLevel, type HeatingThermometer } from "./heating-doubt.ts";
import { gapOf } from "./heating-spells.ts";
import type { HeatingCoolDown, HeatingTarget } from "./heating-types.ts";
import type { HeatingReadings } from "./lethal-rate.ts";
import { readCooling, type Surroundings } from "./read-cooling.ts";

/** A temperature to cool below, and whose it is. */
export type CoolDownLevel = Pick<HeatingCoolDown, "to" | "of">;

/**
 * From the end of the heating until a pot is surely below `level.to`: from the
 * moment its reading with the expanded uncertainty on top falls below for good.
 * Where it still cools at the end of the log, Newton's law foretells that
 * moment. What follows a fall of 20 degC within a minute is not the milk's and
 * is left out.
 *
 * @param readings corrected; at least one
 */
export const heatingCoolDown = (
  readings: HeatingReadings,
  target: HeatingTarget,
  level: CoolDownLevel,
  thermometer: HeatingThermometer,
  surroundings: Surroundings,
): HeatingCoolDown => {
  const peak = peakIndex(readings.celsius);
  const out = probeOut(readings, peak);
  const milk = out === null ? readings : firstOf(readings, out + 1);
  const ended = heatingEnd(milk, target.celsius);
  const start = { ...level, fromMinute: ended.minute, safeAtMinute: null, predicted: null };
  const limit = guardedLevel(thermometer, level.to, "under");
  if (milk.celsius[peak]! < limit) return { ...start, unknown: "never-above" };
  const safeAtMinute = belowForGood(milk, limit);
  if (safeAtMinute !== null) return { ...start, safeAtMinute, unknown: null };
  const cooling = readCooling(milk, ended.index, thermometer.resolution, surroundings);
  const predicted = typeof cooling === "string" ? cooling : forecast(cooling, limit);
  const why = out === null ? null : "probe-out";
  return typeof predicted === "string"
    ? { ...start, unknown: why ?? predicted }
    : { ...start, predicted, unknown: why };
};

const firstOf = ({ minutes, celsius }: HeatingReadings, count: number): HeatingReadings => ({
  minutes: minutes.subarray(0, count),
  celsius: celsius.subarray(0, count),
});

const peakIndex = (celsius: Float64Array): number => {
  let peak = 0;
  for (let index = 1; index < celsius.length; index += 1)
    if (celsius[index]! >= celsius[peak]!) peak = index;
  return peak;
};

/** Last moment at or above the target, and the first reading from there on; the peak where it was never reached. */
const heatingEnd = (
  { minutes, celsius }: HeatingReadings,
  target: number,
): { readonly index: number; readonly minute: number } => {
  const last = celsius.findLastIndex((value) => value >= target);
  const from = last === -1 ? peakIndex(celsius) : last;
  if (last === -1 || from === celsius.length - 1) return { index: from, minute: minutes[from]! };
  return { index: from + 1, minute: crossingAfter({ minutes, celsius }, from, target) };
};

/** Where it comes down through a level after reading `index`; of a gap nothing is known, so its end counts. */
const belowForGood = (readings: HeatingReadings, limit: number): number | null => {
  const { minutes, celsius } = readings;
  const last = celsius.findLastIndex((value) => value >= limit);
  if (last === celsius.length - 1) return null;
  const apart = minutes[last + 1]! - minutes[last]! >= gapOf(readings);
  return apart ? minutes[last + 1]! : crossingAfter(readings, last, limit);
};

const crossingAfter = (
  { minutes, celsius }: HeatingReadings,
  index: number,
  level: number,
): number => {
  const share = (celsius[index]! - level) / (celsius[index]! - celsius[index + 1]!);
  return minutes[index]! + share * (minutes[index + 1]! - minutes[index]!);
};

/** Milk in a pot, even in iced water, does not fall so fast, degC within a minute; a probe in air does (our choice). */
const fastestFall = 20;

/** Last reading before the probe seems to have been taken out; null where it stayed in. */
const probeOut = ({ minutes, celsius }: HeatingReadings, from: number): number | null => {
  let ahead = from;
  for (let index = from; index < celsius.length - 1; index += 1) {
    ahead = Math.max(ahead, index + 1);
    while (ahead < celsius.length - 1 && minutes[ahead + 1]! <= minutes[index]! + 1) ahead += 1;
    const within = Math.max(1, minutes[ahead]! - minutes[index]!);
    if ((celsius[index]! - celsius[ahead]!) / within >= fastestFall) return index;
  }
  return null;
};
