import type { Course } from "./course.ts";

/**
 * What something would read that follows the bath with time constant `lag` and
 * has no other contact: tau dG/dt = B(t) - G(t), begun at the bath's first
 * reading. The bath is taken as straight between its readings, for which the
 * step is exact whatever its length:
 *
 *   G(t + h) = B(t + h) - m tau + (G(t) - B(t) + m tau) exp(-h / tau), m the bath's slope.
 *
 * Uneven sampling is no matter, nor is one that differs from that of `at`.
 *
 * @param bath at least one reading; held level before its first and after its last
 * @param lag minutes; 0 gives the bath itself, straight between its readings
 * @param at minutes in rising order
 * @returns degC at each of `at`
 */
export const followBath = (bath: Course, lag: number, at: Float64Array): Float64Array => {
  const { minutes, celsius } = bath;
  const last = minutes.length - 1;
  let reading = 0;
  let follower = celsius[0]!;
  return at.map((time) => {
    while (reading < last && minutes[reading + 1]! <= time) {
      const step = minutes[reading + 1]! - minutes[reading]!;
      const rise = celsius[reading + 1]! - celsius[reading]!;
      follower = stepped(follower - celsius[reading]!, rise / step, step, lag) + celsius[reading]!;
      reading += 1;
    }
    const since = time - minutes[reading]!;
    if (!(since > 0)) return follower;
    const slope =
      reading < last
        ? (celsius[reading + 1]! - celsius[reading]!) / (minutes[reading + 1]! - minutes[reading]!)
        : 0;
    return stepped(follower - celsius[reading]!, slope, since, lag) + celsius[reading]!;
  });
};

/** The follower after a step, both counted from the bath at the step's start. */
const stepped = (apart: number, slope: number, step: number, lag: number): number =>
  slope * (step - lag) + (apart + slope * lag) * Math.exp(-step / lag);
