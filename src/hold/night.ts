import { describeHold } from "./describe-hold.ts";
import { workingPoints } from "./grid.ts";
import { pickHoldReadings } from "./hold-readings.ts";
import { fewestHoldReadings } from "./hold.ts";
import type { HoldOptions, ProbeNight } from "./hold.ts";
import { readingNoise } from "./noise.ts";
import { findPeak } from "./peak.ts";
import { findPhases } from "./phases.ts";
import { describeWarmUp } from "./warm-up.ts";

/** One probe's readings: minutes strictly increasing, degC without NaN, and the file's smallest step, degC. */
export interface NightReadings {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
  readonly resolution: number;
}

/**
 * Reads one probe's night: phases, warm-up, and everything about the hold.
 *
 * Phases are looked for on readings averaged to about a minute; all figures
 * of the hold come from the readings themselves, time-weighted. Time grows
 * linearly with the readings but for the sorting of the quantiles. Without a
 * hold, `hold`, `holdReadings` and `warmUp` are null and the phases still stand.
 * No readings give no phases.
 */
export const readNight = (series: NightReadings, options: HoldOptions): ProbeNight => {
  const { minutes, celsius, resolution } = series;
  if (minutes.length === 0) return nothing;
  const points = workingPoints(minutes, celsius, resolution);
  const { phases, heatingStart, hold } = findPhases(points);
  const without = {
    ...nothing,
    phases,
    peak: heatingStart === null ? null : findPeak(points, heatingStart, Infinity),
  };
  if (hold === null) return without;
  const holdReadings = pickHoldReadings(minutes, celsius, phases);
  if (holdReadings.minutes.length < fewestHoldReadings) return without;
  const noise = readingNoise(points.celsius);
  return {
    phases,
    warmUp: describeWarmUp(points, heatingStart, hold.from, noise),
    hold: describeHold(holdReadings, hold.from, hold.to, options),
    holdReadings,
    peak: findPeak(points, heatingStart ?? hold.from, hold.to),
  };
};

const nothing: ProbeNight = {
  phases: [],
  warmUp: null,
  hold: null,
  holdReadings: null,
  peak: null,
};
