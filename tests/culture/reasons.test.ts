import { describe, expect, it } from "vitest";
import type { Reason } from "../../src/culture/verdict-types.ts";
import { decide } from "../../src/culture/verdict.ts";
import { asked, evidenceOf, swinging, type NightShape } from "./nights.ts";

const reasonsFor = (shape: NightShape, ...window: Parameters<typeof asked>): readonly Reason[] =>
  decide(asked(...window), evidenceOf(shape)).reasons;
const codes = (reasons: readonly Reason[]) => reasons.map(({ code }) => code);
const calm = { hoursHeld: 12, hold: swinging(40, 0.3, 25) };

describe("verdictReasons", () => {
  it("says by how much the band is clear of both edges when all is inside", () => {
    const [first] = reasonsFor(calm, 38, 43, 10);
    expect(first).toMatchObject({ code: "all-inside" });
    if (first?.code === "all-inside") {
      expect(first.marginLow).toBeCloseTo(1.7, 1);
      expect(first.marginHigh).toBeCloseTo(2.7, 1);
    }
  });

  it("says where the mean lies and for how long the food was outside", () => {
    expect(codes(reasonsFor(calm, 41, 44, 10))).toEqual(
      expect.arrayContaining(["mean-outside", "below-window"]),
    );
    // A sine is above the middle of its upper half for 1/3 of its time (arcsine law: asin(1/2)).
    const above = reasonsFor({ hoursHeld: 12, hold: swinging(40, 1, 25) }, 37, 40.5, 10).find(
      ({ code }) => code === "above-window",
    );
    expect(above?.code === "above-window" && above.share).toBeCloseTo(1 / 3, 1);
  });

  it("warns of a ceiling that is passed, or nearly", () => {
    expect(codes(reasonsFor(calm, 37, 40, 10, 40.1))).toContain("passes-ceiling");
    expect(codes(reasonsFor(calm, 37, 40.35, 10, 40.35))).toContain("near-ceiling");
    expect(codes(reasonsFor(calm, 37, 45, 10, 46))).not.toContain("near-ceiling");
  });

  it("tells of a drift only where it is proven and leads out", () => {
    const drifting = { hoursHeld: 12, hold: (hour: number) => 39 + 0.15 * hour };
    expect(codes(reasonsFor(drifting, 38, 41, 36))).toContain("drifts-out");
    expect(codes(reasonsFor(calm, 39.8, 41, 36))).not.toContain("drifts-out");
  });

  it("gives no doubt where the verdict is settled", () => {
    for (const reasons of [reasonsFor(calm, 36, 44, 10), reasonsFor(calm, 43, 46, 10)]) {
      expect(codes(reasons)).not.toContain("dominant-doubt");
      expect(codes(reasons)).not.toContain("near-edge");
    }
  });
});
