import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inverseOfNormal, solveUpper, triangularise } from "../../src/stats/householder.ts";

describe("triangularise and solveUpper", () => {
  // By hand: least squares of y = a + b x through (0, 1) (1, 3) (2, 4): b 1.5, a 7/6;
  // inverse of [[3, 3], [3, 5]] = [[5, -3], [-3, 3]]/6.
  it("solves a small least-squares problem", () => {
    const columns = [Float64Array.of(1, 1, 1), Float64Array.of(0, 1, 2)];
    const right = Float64Array.of(1, 3, 4);
    triangularise(columns, right);
    expect(columns[0]![1]).toBe(0);
    const [a, b] = solveUpper(columns, right);
    expect(a).toBeCloseTo(7 / 6, 14);
    expect(b).toBeCloseTo(1.5, 14);
    const [[p, q], [, r]] = inverseOfNormal(columns) as [[number, number], [number, number]];
    expect([p * 6, q * 6, r * 6].map((value) => Math.round(value * 1e12) / 1e12)).toEqual([
      5, -3, 3,
    ]);
  });

  it("finds the parameters that made the right side", () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true });
    const row = fc.tuple(number, number, number);
    fc.assert(
      fc.property(fc.array(row, { minLength: 3, maxLength: 12 }), row, (rows, truth) => {
        // One strong diagonal block keeps the columns apart.
        const all = [[9, 0, 0], [0, 9, 0], [0, 0, 9], ...rows];
        const columns = [0, 1, 2].map((j) => Float64Array.from(all, (entries) => entries[j]!));
        const right = Float64Array.from(all, (e) =>
          e.reduce((sum, value, j) => sum + value * truth[j]!, 0),
        );
        triangularise(columns, right);
        solveUpper(columns, right).forEach((value, j) => expect(value).toBeCloseTo(truth[j]!, 11));
      }),
    );
  });
});
