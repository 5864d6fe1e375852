import { describe, expect, it } from "vitest";
import { powerAt, powersOnGrid } from "../../src/stats/lomb-scargle.ts";
import { seededNormal, seededUniform } from "./seeded-noise.ts";

describe("powerAt", () => {
  // 1 - SSR/SST of the least-squares fit of constant, cosine and sine, by
  // numpy.linalg.lstsq (NumPy 2.4.6): the definition of this periodogram.
  it.each([
    [0.05, 0.06928769748959218],
    [0.2, 0.8819595679846445],
    [0.31, 0.022647208202501545],
  ])("is the share of variance explained at %f", (frequency, expected) => {
    const times = [0, 0.7, 1.9, 3.1, 3.3, 4.8, 6.0, 7.1, 7.9, 9.2];
    const values = [1, 2.2, 0.3, -0.5, -0.2, 1.8, 2.0, -0.4, -1.0, 1.1];
    expect(powerAt(times, values, frequency)).toBeCloseTo(expected, 12);
  });

  it("is 0 where nothing varies", () => expect(powerAt([0, 1, 2, 3], [4, 4, 4, 4], 0.2)).toBe(0));
});

describe("powersOnGrid", () => {
  // Two independent computations: fast sums against direct ones, uneven times.
  // The fast sums interpolate (Press & Rybicki 1989): good to some 1e-3.
  it("agrees with direct sums", () => {
    const uniform = seededUniform(2);
    const normal = seededNormal(4);
    const times = Float64Array.from({ length: 300 }, () => 100 * uniform()).toSorted();
    const values = times.map((t) => 40 + Math.sin(t / 2) + normal());
    const grid = { lowest: 4, step: 1 / 800, count: 800 };
    const powers = powersOnGrid(times, values, grid);
    expect(powers).toHaveLength(800);
    powers.forEach((power, k) => {
      expect(Math.abs(power - powerAt(times, values, (4 + k) / 800))).toBeLessThan(2e-3);
    });
  });
});
