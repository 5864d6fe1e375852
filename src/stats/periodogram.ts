import { baluevFalseAlarm } from "./false-alarm.ts";
import { powersOnGrid, powerAt } from "./lomb-scargle.ts";

/** `period` in the unit of the times; `power` 0 to 1, the share of the variance it explains. */
export interface StrongestPeriod {
  readonly period: number;
  readonly power: number;
  readonly falseAlarmProbability: number;
}

/** Trial frequencies per natural step 1/span: fine enough not to fall between. */
const oversampling = 8;
/** Longest grid of trial frequencies. */
const mostFrequencies = 2 ** 19;

interface Band {
  readonly lowest: number;
  readonly step: number;
  readonly count: number;
}

const bandOf = (span: number, count: number, shortest: number, longest: number): Band | null => {
  const finest = Math.max(
    shortest,
    (2 * span) / (count - 1),
    (span * oversampling) / mostFrequencies,
  );
  const step = 1 / (span * oversampling);
  const first = Math.max(1, Math.floor(1 / (longest * step)));
  const last = Math.ceil(1 / (finest * step));
  return last >= first ? { lowest: first, step, count: last - first + 1 } : null;
};

/** Means of consecutive readings within an eighth of the shortest period: its power hardly falls. */
const thin = (
  times: ArrayLike<number>,
  values: ArrayLike<number>,
  width: number,
): { times: Float64Array; values: Float64Array } => {
  const thinTimes = new Float64Array(times.length);
  const thinValues = new Float64Array(times.length);
  let count = 0;
  for (let i = 0; i < times.length;) {
    const end = times[i]! + width;
    const from = i;
    do {
      thinTimes[count]! += times[i]! - times[0]!;
      thinValues[count]! += values[i]!;
      i++;
    } while (i < times.length && times[i]! < end);
    thinTimes[count]! /= i - from;
    thinValues[count]! /= i - from;
    count++;
  }
  return { times: thinTimes.subarray(0, count), values: thinValues.subarray(0, count) };
};

/** Golden-section search for the top of the power between two frequencies. */
const climb = (power: (frequency: number) => number, from: number, to: number): number => {
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = from;
  let high = to;
  let left = high - golden * (high - low);
  let right = low + golden * (high - low);
  let atLeft = power(left);
  let atRight = power(right);
  for (let step = 0; step < 40; step++) {
    if (atLeft > atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - golden * (high - low);
      atLeft = power(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + golden * (high - low);
      atRight = power(right);
    }
  }
  return (low + high) / 2;
};

const indexOfLargest = (values: Float64Array): number => {
  let best = 0;
  for (let i = 1; i < values.length; i++) if (values[i]! > values[best]!) best = i;
  return best;
};

/**
 * The strongest regular period of unevenly sampled readings, between
 * `shortest` and `longest` (unit of the times, which must be in order).
 *
 * Generalised Lomb-Scargle periodogram (mean fitted at each frequency:
 * Zechmeister & Kuerster 2009), by fast sums (Press & Rybicki 1989) on a grid
 * of eight trial frequencies per 1/span, its top then climbed exactly. Readings closer
 * than an eighth of `shortest` are averaged first. Periods under two mean
 * spacings or 1/65,536 of the record are not searched.
 *
 * False-alarm probability after Baluev (2008): the chance that white noise
 * would give such a peak anywhere in the band. Readings that wander slowly
 * (red noise, a trend) exceed it by themselves at long periods: take trends
 * out first, keep `longest` to a fraction of the record, and ask for several
 * cycles. Null under 5 readings, without spread, or where no period is left.
 */
export const strongestPeriod = (
  times: ArrayLike<number>,
  values: ArrayLike<number>,
  range: { readonly shortest: number; readonly longest: number },
): StrongestPeriod | null => {
  if (times.length < 5 || !(range.shortest > 0)) return null;
  const data = thin(times, values, range.shortest / 8);
  const count = data.times.length;
  const span = data.times[count - 1]! - data.times[0]!;
  const band = count < 5 || !(span > 0) ? null : bandOf(span, count, range.shortest, range.longest);
  if (band === null) return null;
  const powers = powersOnGrid(data.times, data.values, band);
  const top = band.lowest + indexOfLargest(powers);
  const exact = (steps: number): number => powerAt(data.times, data.values, steps * band.step);
  const frequency = climb(exact, Math.max(top - 1, 0.5), top + 1) * band.step;
  const power = powerAt(data.times, data.values, frequency);
  if (!(power > 0)) return null;
  const bandwidth = band.step * (band.count - 1);
  const falseAlarmProbability = baluevFalseAlarm(power, data.times, bandwidth);
  return { period: 1 / frequency, power, falseAlarmProbability };
};
