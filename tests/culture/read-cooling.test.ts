import { describe, expect, it } from "vitest";
import { readCooling } from "../../src/culture/read-cooling.ts";

/** Constructed: Newton's law from 90 degC in 20 degC with 60 min, and 12 min from `changeAt` on; every half minute. */
const pot = (count: number, changeAt = Infinity) => {
  const minutes = Float64Array.from({ length: count }, (_, index) => index / 2);
  let celsius = 90;
  return {
    minutes,
    celsius: minutes.map((minute) => {
      const here = celsius;
      celsius = 20 + (celsius - 20) * Math.exp(-0.5 / (minute >= changeAt ? 12 : 60));
      return Math.round(here * 10) / 10;
    }),
  };
};

const read = (readings: ReturnType<typeof pot>, first = 0) =>
  readCooling(readings, first, 0.1, { low: 18, high: 22 });

const meanOf = (found: ReturnType<typeof readCooling>, of: "rate" | "surroundings"): number => {
  if (typeof found === "string") throw new Error(found);
  return found.fits.reduce(
    (sum, { fit, weight }) => sum + weight * (of === "rate" ? fit.rate : fit.law.surroundings),
    0,
  );
};

describe("readCooling", () => {
  it("rests on all readings where one law fits them", () => {
    const found = read(pot(81), 1);
    expect(found).toMatchObject({ end: 40, stretch: 39.5, inflation: 1 });
    expect(Math.abs(meanOf(found, "surroundings") - 20)).toBeLessThan(2);
  });

  it("weighs all its laws to one", () => {
    const found = read(pot(81));
    if (typeof found === "string") throw new Error(found);
    expect(found.fits.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  });

  it("rests on the latest readings where the rate has changed", () => {
    const found = read(pot(81, 30));
    if (typeof found === "string") throw new Error(found);
    // The change stands 10 min before the end.
    expect(found.stretch).toBeLessThan(12.5);
    expect(found.stretch).toBeGreaterThan(3);
  });

  it("tells why where it cannot be read", () => {
    expect(read(pot(5))).toBe("too-few-readings");
    expect(read(pot(81), 78)).toBe("too-few-readings");
    // A minute after the change nothing is known of the new rate.
    expect(read(pot(81, 39))).toBe("too-few-readings");
    const still = { ...pot(81), celsius: new Float64Array(81).fill(70) };
    expect(read(still)).toBe("not-cooling");
    const rising = { ...pot(81), celsius: pot(81).celsius.toReversed() };
    expect(read(rising)).toBe("not-cooling");
  });
});
