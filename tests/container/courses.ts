/** Constructed readings for the container's tests. */
import type { Course } from "../../src/container/course.ts";
import type { ProbeRole, Series } from "../../src/readings/series.ts";

/** Readings every `step` minutes from 0 to `length`. */
export const course = (
  step: number,
  length: number,
  celsius: (minute: number) => number,
): Course => {
  const minutes = Float64Array.from({ length: Math.floor(length / step) + 1 }, (_, i) => i * step);
  return { minutes, celsius: minutes.map(celsius) };
};

export const seriesOf = (role: ProbeRole, readings: Course, resolution = 0.01): Series => ({
  name: role,
  role,
  ...readings,
  resolution,
});

/**
 * A bath that warms from 20 degC towards 41 degC with time constant 40 min, and
 * a food in it that begins as warm as the bath, loses nothing and follows with
 * `lag` (not 40) minutes. Closed form, by partial fractions of
 * tau dF/dt = B - F: F = 41 - 21 (40 exp(-t / 40) - tau exp(-t / tau)) / (40 - tau).
 */
export const warmingBath = (minute: number): number => 41 - 21 * Math.exp(-minute / 40);
export const warmingFood =
  (lag: number) =>
  (minute: number): number =>
    41 - (21 * (40 * Math.exp(-minute / 40) - lag * Math.exp(-minute / lag))) / (40 - lag);
