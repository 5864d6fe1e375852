import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partition, runningSums, scatter } from "../../src/stats/partition.ts";

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

const costOf = (values: readonly number[], changes: readonly number[], penalty: number): number => {
  const bounds = [0, ...changes, values.length];
  const pieces = bounds.slice(1).map((to, k) => values.slice(bounds[k], to));
  return pieces.reduce((sum, piece) => sum + squaresAbout(piece), penalty * changes.length);
};

describe("scatter", () => {
  // By hand: 3, 5, 10 about their mean 6: 9 + 1 + 16.
  it("is the sum of squared deviations of a stretch", () => {
    expect(scatter(runningSums([40, 3, 5, 10, 7]), 1, 4)).toBeCloseTo(26, 10);
  });
});

describe("partition", () => {
  // Constructed: pruning must not forget a start that pieces of at least four still need.
  it("keeps starts that the shortest length still needs", () => {
    const values = [1, 21, 14, 9, 5, 25, 18, 8, 9, 2];
    for (const penalty of [1, 30, 57, 58, 60, 100, 300]) {
      const found = costOf(values, partition(values, penalty, 4), penalty);
      expect(found).toBeCloseTo(leastCost(values, penalty, 4), 9);
    }
  });

  it("reaches the least cost that trying all partitions reaches", () => {
    const readings = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 2, maxLength: 45 });
    const penalties = fc.integer({ min: 1, max: 600 });
    fc.assert(
      fc.property(readings, penalties, fc.integer({ min: 1, max: 5 }), (values, penalty, least) => {
        fc.pre(values.length >= least);
        const changes = partition(values, penalty, least);
        const bounds = [0, ...changes, values.length];
        bounds.slice(1).forEach((to, k) => expect(to - bounds[k]!).toBeGreaterThanOrEqual(least));
        expect(costOf(values, changes, penalty)).toBeCloseTo(leastCost(values, penalty, least), 6);
      }),
      { numRuns: 300 },
    );
  });
});
