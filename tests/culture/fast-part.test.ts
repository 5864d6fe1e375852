import { describe, expect, it } from "vitest";
import { fastPart } from "../../src/culture/fast-part.ts";
import { heldEvidence } from "../../src/culture/hold-plays.ts";
import { slowBlocks } from "../../src/culture/slow-blocks.ts";
import { fitSlowChange, type SlowStrengths } from "../../src/culture/slow-change.ts";
import { evidenceOf, swinging, type NightShape } from "./nights.ts";

// Constructed nights: what moves slowly, and what moves fast about it, are known.
const strengths: SlowStrengths = {
  daily: 0.3,
  roomWander: 0.1,
  ownWander: 0.1,
  approach: 0.1,
  approachHours: 3,
};
const count = 12;

const fastOf = (shape: NightShape) => {
  const evidence = heldEvidence(evidenceOf(shape))!;
  const blocks = slowBlocks(evidence.hold, evidence.readings, evidence.resolution);
  return fastPart(fitSlowChange(blocks, strengths)!, blocks, evidence, count);
};

/** Quantiles of a sine of amplitude 1 at (i + 1/2) / 12: its values are arcsine distributed. */
const sineQuantiles = Array.from({ length: count }, (_, i) =>
  Math.sin(Math.PI * ((i + 0.5) / count - 0.5)),
);

describe("fastPart", () => {
  it("is the swing of a level night, as quantiles of a sine", () => {
    const { values, top, degreesOfFreedom } = fastOf({
      hoursHeld: 12,
      hold: swinging(38, 0.5, 31.7),
    });
    // Readings every minute meet this sine at all its phases; display 0.01 degC, one part cycle.
    values.forEach((value, i) =>
      expect(Math.abs(value - 0.5 * sineQuantiles[i]!)).toBeLessThan(0.02),
    );
    // A reading of the warm-up in the hold's first block lowers that block's mean by 0.03 degC.
    expect(Math.abs(top - 0.5)).toBeLessThan(0.04);
    expect(degreesOfFreedom).toBe(Infinity);
  });

  it.each([
    ["a steady drift", (hour: number) => 0.1 * hour],
    ["a wave of a day", (hour: number) => 0.4 * Math.sin((2 * Math.PI * hour) / 24)],
  ])("leaves %s to the slow part", (_, slow) => {
    const swing = swinging(0, 0.5, 30);
    const level = fastOf({ hoursHeld: 14, hold: (hour) => 38 + swing(hour) });
    const moved = fastOf({ hoursHeld: 14, hold: (hour) => 38 + swing(hour) + slow(hour) });
    // Unremoved, 1.4 degC of drift or 0.8 of the wave would stretch the ends by several tenths.
    moved.values.forEach((value, i) =>
      expect(Math.abs(value - level.values[i]!)).toBeLessThan(0.03),
    );
    expect(Math.abs(moved.top - level.top)).toBeLessThan(0.06);
  });

  it("is next to nothing where nothing moves", () => {
    const { values, top } = fastOf({ hoursHeld: 12, hold: () => 38 });
    // Of the warm-up's last reading the first block keeps 0.013 degC, a display step and a bit.
    for (const value of values) expect(Math.abs(value)).toBeLessThan(0.01);
    expect(Math.abs(top)).toBeLessThan(0.02);
  });

  it("takes few readings' spread as uncertain", () => {
    const shape = { hoursHeld: 10, hold: swinging(38, 0.5, 47), stepMinutes: 30 };
    const { values, degreesOfFreedom } = fastOf(shape);
    const readings = heldEvidence(evidenceOf(shape))!.readings.minutes.length;
    expect(readings).toBeLessThan(40);
    expect(degreesOfFreedom).toBe(readings - 2);
    expect(values).toEqual(values.toSorted());
  });
});
