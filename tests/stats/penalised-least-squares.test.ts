import { describe, expect, it } from "vitest";
import {
  dot,
  penalisedLeastSquares,
  timesVector,
} from "../../src/stats/penalised-least-squares.ts";
import { seededNormal } from "./seeded-noise.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { polynomial } from "../reference/values/linear.ts";

describeReferences(polynomial);

describe("penalisedLeastSquares", () => {
  // NIST StRD Wampler1: y = 1 + x + ... + x^5 at x = 0 .. 20 without a residual.
  it("leaves nothing of Wampler's polynomial", () => {
    const rows = Array.from({ length: 21 }, (_, x) => [1, x, x ** 2, x ** 3, x ** 4, x ** 5]);
    const fit = penalisedLeastSquares({
      rows,
      y: rows.map((row) => row.reduce((sum, one) => sum + one)),
      weights: Array.from({ length: 21 }, () => 1),
      centre: Array.from({ length: 6 }, () => 0),
      precision: Array.from({ length: 6 }, () => 0),
    })!;
    expect(fit.squares).toBeLessThan(1e-12);
  });

  // A penalty is one more observation of the coefficient itself (data augmentation), which turns
  // it into least squares; constructed from a seed.
  it("takes a penalty for one more observation of the coefficient", () => {
    const normal = seededNormal(5);
    const rows = Array.from({ length: 7 }, () => [1, normal(), normal()]);
    const y = rows.map(() => 40 + normal());
    const [centre, precision] = [
      [38, 0.5, -1],
      [0.2, 3, 7],
    ];
    const held = penalisedLeastSquares({ rows, y, weights: y.map(() => 2), centre, precision })!;
    const plain = penalisedLeastSquares({
      rows: [...rows, [1, 0, 0], [0, 1, 0], [0, 0, 1]],
      y: [...y, ...centre],
      weights: [...y.map(() => 2), ...precision],
      centre: [0, 0, 0],
      precision: [0, 0, 0],
    })!;
    held.coefficients.forEach((one, j) => expect(one).toBeCloseTo(plain.coefficients[j]!, 11));
    held.inverse.forEach((one, at) => expect(one).toBeCloseTo(plain.inverse[at]!, 12));
    expect(held.squares).toBeCloseTo(plain.squares, 11);
  });

  // By hand: least of (5 - b)^2 + (7 - b)^2 + 2 (b - 2)^2 is at b = 4, where it is 1 + 9 + 8 = 18.
  it("solves a problem worked by hand, next to a fixed coefficient", () => {
    const fit = penalisedLeastSquares({
      rows: [
        [10, 1],
        [0, 1],
      ],
      y: [35, 7],
      weights: [1, 1],
      centre: [3, 2],
      precision: [Infinity, 2],
    })!;
    expect(Array.from(fit.coefficients)).toEqual([3, expect.closeTo(4, 14)]);
    expect(fit.squares).toBeCloseTo(18, 13);
    expect(Array.from(fit.inverse)).toEqual([0, 0, 0, expect.closeTo(0.25, 15)]);
  });

  it("has no answer where nothing holds a coefficient", () => {
    const open = { rows: [[1, 1]], y: [1], weights: [1], centre: [0, 0] };
    expect(penalisedLeastSquares({ ...open, precision: [0, 0] })).toBeNull();
    expect(penalisedLeastSquares({ ...open, precision: [0, 1] })).not.toBeNull();
  });

  it("needs no observation where all are held, and no free coefficient", () => {
    const none = { rows: [], y: [], weights: [], centre: [3] };
    const held = penalisedLeastSquares({ ...none, precision: [4] })!;
    expect([held.coefficients[0], held.inverse[0], held.squares]).toEqual([3, 0.25, 0]);
    const fixed = penalisedLeastSquares({ ...none, precision: [Infinity] })!;
    expect([fixed.coefficients[0], fixed.inverse[0], fixed.squares]).toEqual([3, 0, 0]);
  });
});

// By hand.
describe("dot and timesVector", () => {
  it("multiply", () => {
    expect(dot([1, 2, 3], [4, 5, 6])).toBe(32);
    expect(Array.from(timesVector(Float64Array.from([2, 1, 1, 3]), [1, -1]))).toEqual([1, -2]);
  });
});
