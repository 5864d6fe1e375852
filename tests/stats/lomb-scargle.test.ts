import { describe, expect, it } from "vitest";
import { powerAt, powersOnGrid } from "../../src/stats/lomb-scargle.ts";
import { seededNormal, seededUniform } from "./seeded-noise.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { lombScargle } from "../reference/values/robust.ts";

describeReferences(lombScargle);

describe("powerAt", () => {
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
