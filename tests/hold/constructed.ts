/** Constructed nights: courses given by formulas, so that their truth is exact. */
import type { Points } from "../../src/hold/grid.ts";
import { seededNormal } from "../stats/seeded-noise.ts";

export type Course = (minute: number) => number;

export interface Log {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
  readonly resolution: number;
}

export interface Sampling {
  readonly until: number;
  readonly step?: number;
  readonly resolution?: number;
  readonly noise?: number;
  readonly seed?: number;
}

/** Readings of a course every `step` minutes, with seeded normal noise, rounded to the resolution. */
export const logged = (course: Course, sampling: Sampling): Log => {
  const { until, step = 1, resolution = 0.01, noise = 0, seed = 1 } = sampling;
  const normal = seededNormal(seed);
  const minutes = Float64Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => i * step);
  const celsius = minutes.map(
    (minute) => Math.round((course(minute) + noise * normal()) / resolution) * resolution,
  );
  return { minutes, celsius, resolution };
};

export const pointsOf = (course: Course, sampling: Sampling): Points => logged(course, sampling);

/** Idle at 20 degC until minute 60, a ramp of 0.4 degC/min to 41 degC, reached at 112.5, held. */
export const rampNight: Course = (minute) =>
  minute < 60 ? 20 : Math.min(41, 20 + 0.4 * (minute - 60));
export const rampHoldReached = 112.5;

/** The lag's answer to 20 -> 41 degC switched on at `from`: 41 - 21 e^(-t/tau). */
export const approachNight =
  (tau: number, from = 0): Course =>
  (minute) =>
    minute < from ? 20 : 41 - 21 * Math.exp(-(minute - from) / tau);

/** Triangular swing about zero: `height` peak to peak, rising for `riseShare` of the period. */
export const sawtooth =
  (period: number, height: number, riseShare = 0.3): Course =>
  (minute) => {
    const phase = (((minute / period) % 1) + 1) % 1;
    const share = phase < riseShare ? phase / riseShare : (1 - phase) / (1 - riseShare);
    return height * (share - 0.5);
  };

/** Adds a swing that sets in once the course first comes within half the height of the level. */
export const swinging =
  (course: Course, swing: Course, from: number): Course =>
  (minute) =>
    course(minute) + (minute < from ? 0 : swing(minute));

/** Lets the course fall towards 20 degC with time constant `tau` from minute `at`. */
export const coolingFrom =
  (course: Course, at: number, tau: number): Course =>
  (minute) =>
    minute < at ? course(minute) : 20 + (course(at) - 20) * Math.exp(-(minute - at) / tau);

/** A power cut: cooling with `tau` from `at` for `length` minutes, then back to the course with `back`. */
export const interrupted =
  (course: Course, at: number, length: number, tau: number, back: number): Course =>
  (minute) => {
    const cold = coolingFrom(course, at, tau);
    if (minute < at + length) return cold(minute);
    const missing = course(at + length) - cold(at + length);
    return course(minute) - missing * Math.exp(-(minute - at - length) / back);
  };
