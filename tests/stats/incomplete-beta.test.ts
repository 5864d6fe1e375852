import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { incompleteBeta } from "../../src/stats/incomplete-beta.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { betaFunction } from "../reference/values/distributions.ts";

describeReferences(betaFunction);

describe("incompleteBeta", () => {
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
