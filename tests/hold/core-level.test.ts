import { describe, expect, it } from "vitest";
import { findCore } from "../../src/hold/core-level.ts";
import { coolingFrom, pointsOf, rampNight } from "./constructed.ts";

describe("findCore", () => {
  it("finds where the log spends its time, from first to last reach", () => {
    const core = findCore(pointsOf(coolingFrom(rampNight, 500, 300), { until: 900 }), 28)!;
    expect(Math.abs(core.level - 41)).toBeLessThan(0.6);
    expect(Math.abs(core.from - 112)).toBeLessThan(4);
    expect(Math.abs(core.to - 500)).toBeLessThan(20);
  });

  it("is null when nothing lies above the floor", () => {
    expect(
      findCore(
        pointsOf(() => 20, { until: 100 }),
        25,
      ),
    ).toBeNull();
  });
});
