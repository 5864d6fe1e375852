import { describe, expect, it } from "vitest";
import { heaviestAssignment } from "../../src/stats/heaviest-assignment.ts";
import { seededUniform } from "./seeded-noise.ts";

const sumOf = (weights: readonly (readonly bigint[])[], columns: readonly number[]): bigint =>
  columns.reduce((sum, column, row) => sum + weights[row]![column]!, 0n);

/** The largest sum over every way to give each row a column of its own. */
const exhaustive = (weights: readonly (readonly bigint[])[], row = 0, taken = 0): bigint | null => {
  if (row === weights.length) return 0n;
  let most: bigint | null = null;
  weights[row]!.forEach((weight, column) => {
    if ((taken & (2 ** column)) > 0) return;
    const rest = exhaustive(weights, row + 1, taken | (2 ** column));
    if (rest !== null && (most === null || weight + rest > most)) most = weight + rest;
  });
  return most;
};

describe("heaviestAssignment", () => {
  it("finds as large a sum as an exhaustive search, a column of its own for each row", () => {
    const uniform = seededUniform(12);
    for (let draw = 0; draw < 2000; draw += 1) {
      const rows = 1 + Math.floor(uniform() * 5);
      const columns = rows + Math.floor(uniform() * 3);
      const largest = [3, 1000, 10 ** 15][draw % 3]!;
      // A third of them with weights below zero.
      const weights = Array.from({ length: rows }, () =>
        Array.from({ length: columns }, () => BigInt(Math.floor((uniform() - 0.3) * largest))),
      );
      const found = heaviestAssignment(weights);
      expect(new Set(found).size).toBe(rows);
      expect(sumOf(weights, found)).toBe(exhaustive(weights));
    }
  });

  it("tells sums apart that differ in the sixtieth digit", () => {
    const huge = 10n ** 60n;
    const weights = [
      [huge, huge + 1n],
      [huge, huge],
    ];
    expect(heaviestAssignment(weights)).toEqual([1, 0]);
  });

  // SciPy 1.17.1, scipy.optimize.linear_sum_assignment(w, maximize=True), w made by this rule.
  it.each([
    [12, 12, 10470],
    [50, 50, 48716],
    [20, 30, 19218],
  ])("%i x %i as a reference library", (rows, columns, total) => {
    const weights = Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (__, c) =>
        BigInt((37 * r * r + 91 * c * c + 13 * r * c * (r + c) + 5) % 1009),
      ),
    );
    expect(sumOf(weights, heaviestAssignment(weights))).toBe(BigInt(total));
  });

  it("has nothing to place without rows", () => {
    expect(heaviestAssignment([])).toEqual([]);
  });
});
