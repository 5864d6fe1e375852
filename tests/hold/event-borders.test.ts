import { describe, expect, it } from "vitest";
import { leaving, returned } from "../../src/hold/event-borders.ts";
import { interrupted, pointsOf } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

// A constructed cut at minute 300: 3.8 degC in an hour, back with 30 min.
const cut = pointsOf(
  interrupted(() => 41, 300, 60, 300, 30),
  { until: 600, resolution: 0.001 },
);
const event = { first: 320, last: 430, below: 3, above: 0 };

describe("leaving", () => {
  it("goes back from the lowest to where the readings last stood in the hold", () => {
    expect(Math.abs(leaving(cut, flatLevel(0.1), event, 0) - 301)).toBeLessThan(5);
  });

  it("takes the readings' own height where the level is too high for all of them", () => {
    const high = { ...flatLevel(0.1), intercept: 41.4 };
    expect(Math.abs(leaving(cut, high, { ...event, first: 120 }, 0) - 301)).toBeLessThan(12);
  });

  it("goes no further than it is told", () => {
    const first = leaving(cut, flatLevel(0.1), event, 310);
    // A tenth below the highest left, at the cut's 4 degC an hour, is one or two minutes on.
    expect(first).toBeGreaterThanOrEqual(310);
    expect(first).toBeLessThanOrEqual(313);
  });
});

describe("returned", () => {
  it("is within half a degree of the spread", () => {
    // 3.8 e^(-t/30) = 0.6 after 55 min.
    expect(Math.abs(returned(cut, flatLevel(0.1), 365, 600) - 415)).toBeLessThan(5);
  });

  it("is the last point where they never come back", () => {
    expect(returned(cut, flatLevel(0.1), 320, 350)).toBe(350);
  });
});
