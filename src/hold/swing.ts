import { autocorrelations } from "../stats/autocorrelation.ts";
import { median, medianAbsoluteDeviation, scaledMad } from "../stats/median.ts";
import { strongestPeriod } from "../stats/periodogram.ts";
import { runningMean } from "./even-grid.ts";
import type { EvenSeries } from "./even-grid.ts";
import type { Swing } from "./hold.ts";

/** Thermostats of kitchen appliances cycle within these, minutes. */
const shortestPeriod = 4;
const longestPeriod = 120;
/** Slower movement than this is drift or day and night, and is taken out first, minutes. */
const slowMinutes = 180;
const fewestCycles = 3;
const falseAlarm = 0.001;
/** A swing repeats: correlation after one and after two periods. Red noise has forgotten by then. */
const leastRepeat = 0.4;
const leastSecondRepeat = 0.25;
/** Cycles of one thermostat are alike: median absolute deviation of their heights over the median. */
const mostUnlike = 0.35;

/**
 * Regular cycling of a thermostat, or null.
 *
 * Period from the Lomb-Scargle periodogram of the hold less its slow movement
 * (running mean over three hours), at most a third of the hold long. Believed
 * only when the correlation one and two periods later is high, which neither
 * noise nor slow wander shows, and when the heights of the cycles agree. Peak
 * to peak is the median over whole cycles of highest less lowest, after
 * averaging over a sixteenth of the period against noise: an outlier spoils
 * one cycle, not the answer.
 */
export const findSwing = (series: EvenSeries): Swing | null => {
  const { step, values } = series;
  const span = (values.length - 1) * step;
  if (values.length < 12) return null;
  const slow = runningMean(values, slowMinutes / step);
  const quick = values.map((value, cell) => value - slow[cell]!);
  const times = values.map((_, cell) => cell * step);
  const longest = Math.min(longestPeriod, span / fewestCycles);
  const shortest = Math.max(shortestPeriod, 2.5 * step);
  if (!(longest > shortest)) return null;
  const found = strongestPeriod(times, clipped(quick), { shortest, longest });
  if (found === null || !(found.falseAlarmProbability < falseAlarm)) return null;
  return describedSwing(quick, found.period, step);
};

/** What lies this many robust standard deviations off is no part of a swing: a dip nobody marked. */
const farOut = 3;

const clipped = (values: Float64Array): Float64Array => {
  const limit = farOut * scaledMad * medianAbsoluteDeviation(values);
  return values.map((value) => Math.max(-limit, Math.min(limit, value)));
};

const describedSwing = (quick: Float64Array, period: number, step: number): Swing | null => {
  const cells = period / step;
  if (!repeats(runningMean(clipped(quick), cells / 8), cells)) return null;
  const heights = cycleHeights(runningMean(quick, cells / 16), cells);
  if (heights.length < fewestCycles) return null;
  const peakToPeak = median(heights);
  if (!(medianAbsoluteDeviation(heights) <= mostUnlike * peakToPeak)) return null;
  return { periodMinutes: period, peakToPeak, cycles: heights.length };
};

const repeats = (smooth: Float64Array, cells: number): boolean => {
  const r = autocorrelations(smooth, Math.ceil(2 * cells) + 1);
  return nearby(r, cells) >= leastRepeat && nearby(r, 2 * cells) >= leastSecondRepeat;
};

/** Highest correlation within a tenth of the lag: periods of real thermostats are not exact. */
const nearby = (r: Float64Array, lag: number): number => {
  let highest = -Infinity;
  for (let at = Math.floor(lag * 0.9); at <= Math.ceil(lag * 1.1); at += 1) {
    highest = Math.max(highest, r[at] ?? -Infinity);
  }
  return highest;
};

/** Highest less lowest of each whole period. */
const cycleHeights = (smooth: Float64Array, cells: number): number[] => {
  const heights: number[] = [];
  for (let from = 0; Math.round(from + cells) < smooth.length; from += cells) {
    let [low, high] = [Infinity, -Infinity];
    for (let cell = Math.round(from); cell <= Math.round(from + cells); cell += 1) {
      low = Math.min(low, smooth[cell]!);
      high = Math.max(high, smooth[cell]!);
    }
    heights.push(high - low);
  }
  return heights;
};
