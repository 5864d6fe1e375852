import { describe, expect, it } from "vitest";
import { shareLost } from "../../src/container/share-lost.ts";

// Constructed; uncertainties by JCGM 100, 5.1.2 worked out by hand.
const room = { mean: 20, standardUncertainty: 0.8, from: "stated" } as const;
const means = { bath: 41, food: 39.4, followed: 40, scatter: 0.01 };

describe("shareLost", () => {
  it("is the followed bath's distance over that to the room", () => {
    const { value, standardUncertainty } = shareLost(means, room, null, 0.3, 0.6)!;
    expect(value).toBeCloseTo(0.6 / 20, 12);
    // u = hypot(0.3, 0.03 x hypot(0.8, 0.6)) / 20
    expect(standardUncertainty).toBeCloseTo(Math.hypot(0.3, 0.03) / 20, 12);
  });

  it("carries the lag's doubt where the bath was moving", () => {
    // Bath 1 degC ahead of its follower at a lag of 20 min: 0.05 degC for each minute of doubt.
    const lag = { value: 20, standardUncertainty: 8 };
    const { standardUncertainty } = shareLost(means, room, lag, 0.3, 0.6)!;
    expect(standardUncertainty).toBeCloseTo(Math.hypot(0.3, 0.4, 0.03) / 20, 12);
  });

  it("is null where the bath is less than 3 degC above the room", () => {
    expect(shareLost(means, { ...room, mean: 37.1 }, null, 0.3, 0.6)).toBeNull();
    expect(shareLost(means, { ...room, mean: 36.9 }, null, 0.3, 0.6)).not.toBeNull();
  });
});
