import { describe, expect, it } from "vitest";
import { gapsOf, outside, timeWeights, within } from "../../src/container/course.ts";

// Constructed cases throughout.
const readings = (...minutes: number[]) => ({
  minutes: Float64Array.from(minutes),
  celsius: Float64Array.from(minutes, (minute) => 30 + minute / 10),
});

describe("within and outside", () => {
  it("keep both ends of a stretch, and what touches a disturbance", () => {
    const part = within(readings(0, 1, 2, 3, 4), { fromMinute: 1, toMinute: 3 });
    expect([...part.minutes]).toEqual([1, 2, 3]);
    expect([...outside(part, [{ fromMinute: 1, toMinute: 3 }]).minutes]).toEqual([1, 3]);
    expect([...outside(part, [{ fromMinute: 1.5, toMinute: 9 }]).celsius]).toEqual([30.1]);
  });

  it("find nothing where there is nothing", () => {
    expect(within(readings(0, 1), { fromMinute: 5, toMinute: 9 }).minutes).toHaveLength(0);
    expect(within(readings(), { fromMinute: 0, toMinute: 9 }).minutes).toHaveLength(0);
  });
});

describe("gapsOf", () => {
  it("finds the intervals longer than the limit", () => {
    expect(gapsOf(readings(0, 1, 12, 13), 5)).toEqual([{ fromMinute: 1, toMinute: 12 }]);
  });
});

describe("timeWeights", () => {
  it("gives each reading half the way to its neighbours, and no part of a gap", () => {
    expect([...timeWeights(Float64Array.of(0, 2, 3, 60, 61), 5)]).toEqual([2, 1.5, 3, 3, 1]);
  });
});
