import type { Course } from "./course.ts";

/**
 * What something would read that follows the bath with time constant `lag` and
 * has no other contact: tau dG/dt = B(t) - G(t), begun at the bath's first
 * reading. The bath is taken as straight between its readings, for which the
 * step is exact whatever its length: with x = h / tau and e = exp(-x),
 *
 *   G(t + h) = B(t) + (G(t) - B(t)) e + (B(t + h) - B(t)) (1 - (1 - e) / x).
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
      const before = celsius[reading]!;
      const step = minutes[reading + 1]! - minutes[reading]!;
      follower = before + stepped(follower - before, celsius[reading + 1]! - before, step / lag);
      reading += 1;
    }
    const since = time - minutes[reading]!;
    if (!(since > 0)) return follower;
    const before = celsius[reading]!;
    const part = reading < last ? since / (minutes[reading + 1]! - minutes[reading]!) : 0;
    const rise = reading < last ? part * (celsius[reading + 1]! - before) : 0;
    return before + stepped(follower - before, rise, since / lag);
  });
};

/**
 * The follower after a step of `turns` time constants in which the bath rises
 * by `rise`, counted like `apart` from the bath at the step's start. Written so
 * that the shortest steps lose no digits.
 */
const stepped = (apart: number, rise: number, turns: number): number => {
  const gone = -Math.expm1(-turns);
  return apart * (1 - gone) + rise * (1 - gone / turns);
};
