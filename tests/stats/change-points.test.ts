import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changePoints } from "../../src/stats/change-points.ts";
import { seededNormal } from "./seeded-noise.ts";

/** Levels each so many readings long, under noise. */
const steps = (
  stretches: readonly (readonly [level: number, length: number])[],
  deviation: number,
  normal: () => number,
): Float64Array => {
  const levels = stretches.flatMap(([level, n]) => Array.from({ length: n }, () => level));
  return Float64Array.from(levels, (level) => level + deviation * normal());
};

const squaresAbout = (values: readonly number[]): number => {
  const centre = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.reduce((sum, value) => sum + (value - centre) ** 2, 0);
};

/** Optimal partitioning without pruning (Jackson et al. 2005): the least cost by trying all. */
const leastCost = (values: readonly number[], penalty: number, shortest: number): number => {
  const best = [-penalty];
  for (let end = 1; end <= values.length; end++) {
    best[end] = Infinity;
    for (let from = 0; from <= end - shortest; from++) {
      const cost = best[from]! + squaresAbout(values.slice(from, end)) + penalty;
      best[end] = Math.min(best[end]!, cost);
    }
  }
  return best[values.length]!;
};

describe("changePoints", () => {
  // Constructed: steps of ten noise deviations are placed to the reading.
  it("places clear changes exactly", () => {
    const values = steps(
      [
        [20, 60],
        [41, 100],
        [40, 80],
        [35, 7],
        [40, 50],
      ],
      0.1,
      seededNormal(1),
    );
    expect(changePoints(values)).toEqual([60, 160, 240, 247]);
  });

  it("places them exactly in a long series as well", () => {
    const stretches = [
      [22, 30_000],
      [41, 50_000],
      [40, 20_000],
      [36, 200],
      [40, 9_800],
    ] as const;
    expect(changePoints(steps(stretches, 0.1, seededNormal(2)))).toEqual([
      30_000, 80_000, 100_000, 100_200,
    ]);
  });

  // Constructed: the penalty 3 ln n is to keep noise from being cut up; a false
  // change in fewer than 5 of 100 series.
  it("does not cut up noise", () => {
    const normal = seededNormal(3);
    let cut = 0;
    for (let run = 0; run < 100; run++) {
      if (changePoints(steps([[40, 500]], 0.3, normal)).length > 0) cut++;
    }
    expect(cut).toBeLessThan(5);
  });

  it("reaches the least cost that trying all partitions reaches", () => {
    const reading = fc.integer({ min: 0, max: 30 });
    const shortest = fc.integer({ min: 1, max: 5 });
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 10, maxLength: 45 }),
        shortest,
        (values, least) => {
          const differences = values.slice(1).map((value, i) => value - values[i]!);
          // The cost in noise variances does not matter for which partition is best, so the
          // noise is read off from what it must be: median absolute difference, scaled.
          const sorted = differences.map((d) => Math.abs(d - medianOf(differences)));
          const noise = (1.482602218505602 * medianOf(sorted)) / Math.SQRT2;
          fc.pre(noise > 0);
          const changes = changePoints(values, 6, least);
          const bounds = [0, ...changes, values.length];
          let cost = 6 * noise ** 2 * changes.length;
          for (let k = 1; k < bounds.length; k++) {
            expect(bounds[k]! - bounds[k - 1]!).toBeGreaterThanOrEqual(least);
            cost += squaresAbout(values.slice(bounds[k - 1], bounds[k]));
          }
          expect(cost).toBeCloseTo(leastCost(values, 6 * noise ** 2, least), 6);
        },
      ),
    );
  });

  it("finds none in flat, short or empty series", () => {
    expect(changePoints(new Float64Array(100).fill(40))).toEqual([]);
    expect(changePoints([40, 41, 42])).toEqual([]);
    expect(changePoints([])).toEqual([]);
  });
});

const medianOf = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
};
