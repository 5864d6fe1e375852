import { describe, expect, it } from "vitest";
import { slowBlocks } from "../../src/culture/slow-blocks.ts";
import { evidenceOf, swinging } from "./nights.ts";

const blocksOf = (evidence: ReturnType<typeof evidenceOf>) =>
  slowBlocks(evidence.night.hold!, evidence.night.holdReadings!, evidence.resolution);

describe("slowBlocks", () => {
  it("averages whole cycles, so that a swing leaves the block means alone", () => {
    const { means } = blocksOf(evidenceOf({ hoursHeld: 12, hold: swinging(40, 1, 30) }));
    expect(means.length).toBeGreaterThan(8);
    // The mean of a sine over its period is zero; samples a minute apart and block edges leave 0.05.
    for (const mean of means) expect(Math.abs(mean - 40)).toBeLessThan(0.05);
  });

  it("follows a slow change", () => {
    const { hours, means } = blocksOf(
      evidenceOf({ hoursHeld: 12, hold: (hour) => 40 + 0.05 * hour }),
    );
    const rise = (means.at(-1)! - means[0]!) / (hours.at(-1)! - hours[0]!);
    // The hold begins within the last half degree of the ramp, which tilts the first block a little.
    expect(Math.abs(rise - 0.05)).toBeLessThan(0.002);
  });

  it("keeps to a fixed number of blocks however many readings there are", () => {
    const long = evidenceOf({ hoursHeld: 48, hold: () => 40, stepMinutes: 0.25 });
    expect(blocksOf(long).means.length).toBeLessThanOrEqual(42);
  });
});
