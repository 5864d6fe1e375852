import { describe, expect, it } from "vitest";
import { clockPeriod, lostHalf, unwrapClock } from "../../../src/readings/times/unwrap.ts";

const hour = 3600;
const unwrapped = (list: readonly number[], period: number): number[] => {
  const seconds = Float64Array.from(list);
  unwrapClock(seconds, period);
  return Array.from(seconds);
};
const hours = (...list: number[]): Float64Array => Float64Array.from(list, (value) => value * hour);

describe("unwrapClock", () => {
  it("runs on over midnight, again and again", () => {
    expect(unwrapped([80_000, 10_000, 80_000, 10_000], 86400)).toEqual([
      80_000, 96_400, 166_400, 182_800,
    ]);
  });
  it("leaves a row out of order where it is, over midnight too", () => {
    expect(unwrapped([100, 110, 105, 115], 86400)).toEqual([100, 110, 105, 115]);
    expect(unwrapped([86_395, 5, 86_398, 10], 86400)).toEqual([86_395, 86_405, 86_398, 86_410]);
  });
});

describe("clockPeriod", () => {
  it.each([
    ["hours beyond 12", hours(11, 12, 13, 1), 86400],
    ["an hour 0", hours(11, 12, 0, 1), 86400],
    ["no step back", hours(9, 10, 11, 12), 86400],
    ["steps that run on after 12", hours(10, 11, 12, 1, 2, 3), 43200],
    ["steps that run on by neither", hours(10, 10.5, 11, 12, 7), "undecidable"],
    ["none", hours(), 86400],
  ] as const)("%s", (_name, seconds, period) => expect(clockPeriod(seconds)).toBe(period));
});

describe("lostHalf", () => {
  it("finds the step back after 12 o'clock", () => {
    expect(lostHalf(hours(11, 12, 12.9, 1, 2))).toBe(3);
    expect(lostHalf(hours(24 + 11, 24 + 12, 24 + 12.9, 24 + 1))).toBe(3);
  });
  it.each([
    ["hours beyond 12", hours(11, 12.9, 1, 14)],
    ["no step back", hours(1, 2, 12)],
    ["two rows, far out of order", hours(11, 1)],
    ["rows out of order by 10 hours", hours(11, 11.1, 11.2, 1, 1.1)],
    ["the next day", hours(12, 24 + 1)],
    ["none", hours()],
  ])("finds none with %s", (_name, seconds) => expect(lostHalf(seconds)).toBe(-1));
});
