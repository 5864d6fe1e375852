import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { incompleteBeta } from "../../src/stats/incomplete-beta.ts";
import { correctDigits } from "./correct-digits.ts";

describe("incompleteBeta", () => {
  // mpmath 1.3.0, betainc regularized with 40 digits.
  // prettier-ignore
  it.each([
    [0.1, 2, 3, 0.0523], [0.7, 0.5, 4.5, 0.9986770494157325],
    [0.99, 30, 2, 0.9616104854047645], [0.5, 200, 200, 0.5],
  ])("I_%f(%f, %f)", (x, a, b, expected) => {
    expect(correctDigits(incompleteBeta(x, a, b), expected)).toBeGreaterThanOrEqual(12);
  });

  it("runs from 0 to 1 and no further", () => {
    expect([incompleteBeta(0, 2, 3), incompleteBeta(1, 2, 3)]).toEqual([0, 1]);
    expect(incompleteBeta(-0.1, 2, 3)).toBeNaN();
    expect(incompleteBeta(1.1, 2, 3)).toBeNaN();
    expect(incompleteBeta(0.5, 0, 3)).toBeNaN();
  });

  it("meets I_x(a, b) = 1 - I_(1-x)(b, a) (Abramowitz & Stegun 26.5.2)", () => {
    const shape = fc.double({ min: 0.2, max: 500, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), shape, shape, (x, a, b) => {
        expect(incompleteBeta(x, a, b) + incompleteBeta(1 - x, b, a, x)).toBeCloseTo(1, 11);
      }),
    );
  });
});
