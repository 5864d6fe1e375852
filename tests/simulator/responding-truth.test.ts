import { describe, expect, it } from "vitest";
import { normalCdf } from "../../src/stats/normal.ts";
import { createRandom } from "./random.ts";
import { stepsWith } from "./responding-control.ts";
import { createFuture, freshHoldMean, insideShare, outlook } from "./responding-truth.ts";
import type { RespondingAppliance } from "./responding-appliance.ts";
import type { RespondingContainer } from "./responding-container.ts";

const steady: RespondingAppliance = {
  kind: "circulating bath",
  response: stepsWith(
    { kind: "steps", low: 20, high: 60, step: 0.1 },
    { bias: 0, slope: 1, curvature: 0 },
  ),
  thermostatted: true,
  thermostatKnown: true,
  roomShare: 0,
  roomLagMinutes: 30,
  swing: null,
  runDeviation: 0.3,
  warmUp: { ramp: 30 },
};
const basin: RespondingContainer = {
  container: { id: "basin", name: "basin", stands: "basin", volume: 2, count: 1, changedOn: null },
  shareLost: 0,
  lagMinutes: 2,
};
const habit = { low: 18, high: 24 };
const future = (appliance: RespondingAppliance) =>
  createFuture(createRandom(5, "future"), appliance, habit, 24);

describe("outlook", () => {
  it("of a bath that nothing moves is the normal distribution of its runs", () => {
    // Six middles of equal parts stand for the distribution: within a sixth of the probability.
    const of = future(steady);
    for (const level of [37.2, 38, 38.4, 39.3]) {
      const { share, probability } = outlook(of, steady, basin, level, {
        low: 37.5,
        high: 38.5,
        ceiling: null,
        hours: 24,
      });
      const expected = normalCdf((38.5 - level) / 0.3) - normalCdf((37.5 - level) / 0.3);
      expect(Math.abs(share - expected)).toBeLessThan(1 / 6);
      expect(probability).toBeCloseTo(share, 9);
    }
  });

  it("of a swing about the window's edge is half inside, and met by no run", () => {
    // Constructed: a sine spends half its time on either side of its middle.
    const swing = { peakToPeak: 1, periodMinutes: 37, risingShare: null };
    const swinging = { ...steady, swing, runDeviation: 0 };
    const asked = { low: 36, high: 38, ceiling: 38.4, hours: 24 };
    const found = outlook(future(swinging), swinging, basin, 38, asked);
    expect(Math.abs(found.share - 0.5)).toBeLessThan(0.02);
    expect(found.probability).toBe(0);
    // Its top, 0.5 / sqrt(1 + (2 pi 2 / 37)^2) = 0.473 above 38, passes 38.4.
    expect(found.ceilingRisk).toBe(1);
    const below = outlook(future(swinging), swinging, basin, 38, { ...asked, ceiling: 38.48 });
    expect(below.ceilingRisk).toBe(0);
  });
});

describe("freshHoldMean", () => {
  it("scatters as runs do where the room is not felt", () => {
    const of = future(steady);
    const random = createRandom(6, "fresh");
    const drawn = Array.from({ length: 4000 }, () =>
      freshHoldMean(random, of, steady, basin, 40, 24),
    );
    const mean = drawn.reduce((sum, value) => sum + value, 0) / drawn.length;
    const variance = drawn.reduce((sum, value) => sum + (value - mean) ** 2, 0) / drawn.length;
    // Three standard errors: 0.3 / sqrt(4000) of the mean, 0.3 / sqrt(8000) of the deviation.
    expect(Math.abs(mean - 40)).toBeLessThan(0.015);
    expect(Math.abs(Math.sqrt(variance) - 0.3)).toBeLessThan(0.011);
  });

  it("spreads with the room as far as the appliance feels it", () => {
    const warmer = { ...steady, roomShare: 1, runDeviation: 0 };
    const of = future(warmer);
    const random = createRandom(7, "fresh");
    const drawn = Array.from({ length: 500 }, () =>
      freshHoldMean(random, of, warmer, basin, 40, 24),
    );
    // Over a whole day the wave averages out, and the day's level stays within 18..24, 0.3 off either end.
    for (const value of drawn) {
      expect(value).toBeGreaterThan(40 + 18.3 - 20 - 0.05);
      expect(value).toBeLessThan(40 + 23.7 - 20 + 0.05);
    }
    expect(Math.max(...drawn) - Math.min(...drawn)).toBeGreaterThan(2);
  });
});

describe("insideShare", () => {
  it("agrees with counting one by one", () => {
    const random = createRandom(8, "share");
    for (let round = 0; round < 200; round += 1) {
      const values = Float64Array.from({ length: random.integer(1, 40) }, () =>
        random.integer(0, 12),
      ).toSorted();
      const low = random.integer(-1, 13);
      const high = low + random.integer(0, 6);
      const counted = values.filter((value) => value >= low && value <= high).length;
      expect(insideShare(values, low, high)).toBeCloseTo(counted / values.length, 12);
    }
  });
});
