import { describe, expect, it } from "vitest";
import { normalDraws } from "../../src/stats/normal-sequence.ts";
import { normalCdf } from "../../src/stats/normal.ts";

describe("normalDraws", () => {
  const draws = normalDraws(256, 12);

  it("gives the same numbers every time", () => {
    expect(normalDraws(256, 12)).toEqual(draws);
  });

  it("puts one number into each equally likely stratum of each dimension (the definition of a Latin hypercube)", () => {
    for (let dimension = 0; dimension < 12; dimension += 1) {
      const strata = draws.map((row) => Math.floor(normalCdf(row[dimension]!) * 256));
      expect(new Set(strata).size).toBe(256);
    }
  });

  it("leaves the dimensions unrelated", () => {
    // The correlation of 256 independent pairs has standard deviation 1/16; 4.5 of them hold for all 66 pairs.
    for (let a = 0; a < 12; a += 1) {
      for (let b = 0; b < a; b += 1) {
        const product = draws.reduce((sum, row) => sum + row[a]! * row[b]!, 0) / 256;
        expect(Math.abs(product)).toBeLessThan(4.5 / 16);
      }
    }
  });
});
