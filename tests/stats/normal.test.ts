import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalCdf, normalDensity, normalQuantile } from "../../src/stats/normal.ts";
import { correctDigits } from "./correct-digits.ts";

describe("normalCdf", () => {
  // mpmath 1.3.0, ncdf with 30 digits. Thirteen digits: the inputs are doubles, and
  // in the far tail one rounding of z = 30 alone moves the value by 1e-13 relative.
  // prettier-ignore
  it.each([
    [-30, 4.906713927148187e-198], [-20, 2.7536241186062337e-89], [-10, 7.619853024160525e-24],
    [-5, 2.866515718791939e-7], [-3, 0.0013498980316300946], [-2.000001, 0.022750077957266676],
    [-2, 0.02275013194817921], [-1, 0.15865525393145705], [-0.5, 0.3085375387259869],
    [-0.001, 0.49960105778608893], [0, 0.5], [0.3, 0.6179114221889527], [1, 0.8413447460685429],
    [1.5, 0.9331927987311419], [2, 0.9772498680518208], [3, 0.9986501019683699], [5, 0.9999997133484281],
  ])("at %f", (z, expected) => {
    expect(correctDigits(normalCdf(z), expected)).toBeGreaterThanOrEqual(13.7);
  });

  it("ends in 0 and 1", () => {
    expect([normalCdf(-Infinity), normalCdf(-60), normalCdf(60), normalCdf(Infinity)]).toEqual([
      0, 0, 1, 1,
    ]);
    expect(normalCdf(NaN)).toBeNaN();
  });
});

describe("normalDensity", () => {
  // 1/sqrt(2 pi) and 1/sqrt(2 pi e), by definition.
  it("is the bell", () => {
    expect(normalDensity(0)).toBeCloseTo(0.3989422804014327, 15);
    expect(normalDensity(-1)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI * Math.E), 15);
    expect(normalDensity(50)).toBe(0);
  });
});

describe("normalQuantile", () => {
  // mpmath 1.3.0, root of ncdf with 30 digits. p near 1/2 loses digits of p - 1/2.
  // prettier-ignore
  it.each([
    [1e-300, -37.0470962993612], [1e-100, -21.273453560965326], [1e-20, -9.262340089798407],
    [1e-10, -6.361340902404057], [1e-5, -4.264890793922825], [0.001, -3.0902323061678136],
    [0.01, -2.326347874040841], [0.025, -1.9599639845400543], [0.075, -1.439531470938456],
    [0.1, -1.2815515655446004], [0.3, -0.5244005127080408], [0.6, 0.2533471031357997],
    [0.9, 1.2815515655446006], [0.975, 1.9599639845400538], [0.995, 2.5758293035489004],
  ])("at %f", (p, expected) => {
    expect(correctDigits(normalQuantile(p), expected)).toBeGreaterThanOrEqual(14);
  });

  it("has its ends and nothing beyond", () => {
    expect([normalQuantile(0), normalQuantile(0.5), normalQuantile(1)]).toEqual([
      -Infinity,
      0,
      Infinity,
    ]);
    expect(normalQuantile(-0.1)).toBeNaN();
    expect(normalQuantile(1.1)).toBeNaN();
  });

  it("undoes normalCdf", () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (z) => {
        // Above 0 the value 1 - tail keeps only 1e-16 absolute: at 5 that is 1e-10 in z.
        const allowed = z > 0 ? 1e-16 / normalDensity(z) + 1e-13 : 1e-13 * (1 + Math.abs(z));
        expect(Math.abs(normalQuantile(normalCdf(z)) - z)).toBeLessThanOrEqual(allowed);
      }),
    );
  });
});
