import { describe, expect, it } from "vitest";
import { rateInterval, shareOf } from "./binomial.ts";

describe("rateInterval", () => {
  it("has the ends of a worked example", () => {
    // Newcombe 1998, Statistics in Medicine 17, 857-872, table I: 81 of 263 gives 0.2553 to 0.3662.
    const { low, high } = rateInterval({ met: 81, of: 263 });
    expect(low).toBeCloseTo(0.2553, 4);
    expect(high).toBeCloseTo(0.3662, 4);
  });

  it("has room above where nothing was met (same table: 0 of 20 gives 0 to 0.1611)", () => {
    const { low, high } = rateInterval({ met: 0, of: 20 });
    expect(low).toBe(0);
    expect(high).toBeCloseTo(0.1611, 4);
    expect(rateInterval({ met: 0, of: 0 })).toEqual({ low: 0, high: 1 });
  });
});

it("counts", () => {
  expect(shareOf([1, 2, 3], (item) => item > 1)).toEqual({ met: 2, of: 3 });
});
