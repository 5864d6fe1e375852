import { describe, expect, it } from "vitest";
import { shapeDifferences } from "../../src/advice/recheck-shape.ts";
import type { TestPair } from "../../src/advice/recheck-level.ts";
import { settledTest, type ConstructedTest } from "./constructed.ts";

const compared = (then: ConstructedTest, now: ConstructedTest) =>
  shapeDifferences({
    baseline: settledTest(then),
    newest: settledTest(now),
  } as TestPair);
const swing = (peakToPeak: number) => ({ peakToPeak, periodMinutes: 30 });

/** Constructed nights of known swing and drift. */
describe("shapeDifferences", () => {
  it("sees a swing that doubled, and a spread that grew with it", () => {
    const found = compared({ level: 38, swing: swing(0.5) }, { level: 38, swing: swing(1) });
    expect(found.swing!.difference).toBeCloseTo(0.5, 1);
    expect(found.swing!.low).toBeGreaterThan(0);
    // A sine of peak to peak p has the standard deviation p / (2 sqrt 2).
    expect(found.spread!.difference).toBeCloseTo(0.5 / (2 * Math.SQRT2), 2);
  });

  it("sees a drift that was not there", () => {
    const found = compared({ level: 38 }, { level: 38, driftPerHour: -0.2 });
    expect(found.drift!.difference).toBeCloseTo(-0.2, 2);
    expect(found.drift!.high).toBeLessThan(0);
  });

  it("finds nothing between two nights alike", () => {
    const night = { level: 38, swing: swing(0.6) };
    for (const one of Object.values(compared(night, night))) {
      expect(one!.difference).toBeCloseTo(0, 9);
      expect(one!.low).toBeLessThan(0);
      expect(one!.high).toBeGreaterThan(0);
    }
  });

  it("compares no swing where one night has none", () => {
    expect(compared({ level: 38 }, { level: 38, swing: swing(0.6) }).swing).toBeNull();
  });
});
