import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logGamma } from "../../src/stats/log-gamma.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { gammaFunctions } from "../reference/values/distributions.ts";

describeReferences(gammaFunctions);

describe("logGamma", () => {
  it("is not defined at or below 0", () => {
    expect(logGamma(0)).toBeNaN();
    expect(logGamma(-1.5)).toBeNaN();
  });

  it("meets the recurrence Gamma(x + 1) = x Gamma(x)", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (x) => {
        const allowed = 1e-14 * (10 + Math.abs(logGamma(x + 1)));
        expect(Math.abs(logGamma(x + 1) - logGamma(x) - Math.log(x))).toBeLessThanOrEqual(allowed);
      }),
    );
  });
});
