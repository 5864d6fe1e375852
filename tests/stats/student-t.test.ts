import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalCdf, normalQuantile } from "../../src/stats/normal.ts";
import { studentTCdf, studentTQuantile } from "../../src/stats/student-t.ts";
import { correctDigits } from "./correct-digits.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { studentT } from "../reference/values/student-t.ts";

describeReferences(studentT);

describe("studentTQuantile", () => {
  it("mirrors about 1/2", () => {
    for (const p of [0.95, 0.975, 0.99, 0.995])
      for (const df of [1, 2, 4, 5, 9, 10, 19, 20, 29, 30, 42, 49, 60, 99, 120])
        expect(studentTQuantile(1 - p, df)).toBeCloseTo(-studentTQuantile(p, df), 9);
  });

  it("is exact with one degree of freedom: tan(pi (p - 1/2))", () => {
    for (const p of [1e-6, 0.2, 0.7, 0.99]) {
      const exact = p < 0.25 ? -1 / Math.tan(Math.PI * p) : Math.tan(Math.PI * (p - 0.5));
      expect(correctDigits(studentTQuantile(p, 1), exact)).toBeGreaterThanOrEqual(12);
    }
  });

  it("becomes the normal quantile", () => {
    expect(studentTQuantile(0.975, Infinity)).toBe(normalQuantile(0.975));
    // The first difference is (z^3 + z)/(4 df), 2.4e-11 here (Abramowitz & Stegun 26.7.5).
    expect(studentTQuantile(0.975, 1e11)).toBeCloseTo(normalQuantile(0.975), 9);
  });

  it("has its ends and refuses the impossible", () => {
    expect([studentTQuantile(0, 3), studentTQuantile(0.5, 3), studentTQuantile(1, 3)]).toEqual([
      -Infinity,
      0,
      Infinity,
    ]);
    expect(studentTQuantile(0.9, 0)).toBeNaN();
    expect(studentTQuantile(1.2, 3)).toBeNaN();
  });

  it("undoes studentTCdf", () => {
    const t = fc.double({ min: -30, max: -1e-3, noNaN: true });
    const df = fc.double({ min: 0.5, max: 5000, noNaN: true });
    fc.assert(
      fc.property(t, df, (at, freedom) => {
        const found = studentTQuantile(studentTCdf(at, freedom), freedom);
        expect(Math.abs(found - at)).toBeLessThanOrEqual(1e-11 * (1 + Math.abs(at)));
      }),
    );
  });
});

describe("studentTCdf", () => {
  it("mirrors about 0", () => {
    for (const t of [-1e6, -10, -5, -3, -2, -1, -0.1, -1e-8])
      for (const df of [0.5, 1, 3.7, 12, 1000, 12345.6, 1e6, 1e9])
        expect(studentTCdf(-t, df)).toBeCloseTo(1 - studentTCdf(t, df), 14);
  });

  it("is the normal one with infinite degrees of freedom", () => {
    expect(studentTCdf(-1.3, Infinity)).toBe(normalCdf(-1.3));
    expect(studentTCdf(1, -1)).toBeNaN();
  });
});
