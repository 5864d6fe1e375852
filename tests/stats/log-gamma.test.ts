import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { logBeta, logGamma } from "../../src/stats/log-gamma.ts";

describe("logGamma", () => {
  // SciPy 1.17.1, gammaln. Tolerance 1e-14 relative, 1e-14 absolute near the root at 1.
  // prettier-ignore
  it.each([
    [0.1, 2.252712651734206], [0.5, 0.5723649429247], [1, 0], [3.3, 0.9870985778947343],
    [10, 12.801827480081469], [25.5, 56.38916764371994], [1000, 5905.220423209181],
  ])("at %f", (x, expected) => {
    expect(Math.abs(logGamma(x) - expected)).toBeLessThanOrEqual(2e-14 * (1 + Math.abs(expected)));
  });

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

describe("logBeta", () => {
  // mpmath 1.3.0 with 40 digits. With large arguments only a stable difference stays this good.
  // prettier-ignore
  it.each([
    [0.5, 0.5, 1.1447298858494002], [3, 0.5, 0.06453852113757118], [1e6, 0.5, -6.335390211057437],
    [1e9, 0.5, -9.789267975423506], [20, 7.5, -16.03074240491828], [7.5, 20, -16.03074240491828],
  ])("at %f and %f", (a, b, expected) => {
    expect(Math.abs(logBeta(a, b) - expected)).toBeLessThanOrEqual(1e-13);
  });
});
