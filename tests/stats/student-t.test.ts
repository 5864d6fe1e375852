import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalCdf, normalQuantile } from "../../src/stats/normal.ts";
import { studentTCdf, studentTQuantile } from "../../src/stats/student-t.ts";
import { correctDigits } from "./correct-digits.ts";

// Six decimals by SciPy 1.17.1 and R 4.2.2 alike; rounded to three they are
// NIST/SEMATECH e-Handbook 1.3.6.7.2. Tolerance half the last decimal.
const degrees = [1, 2, 4, 5, 9, 10, 19, 20, 29, 30, 42, 49, 60, 99, 120];
// prettier-ignore
const table: readonly (readonly [number, readonly number[]])[] = [
  [0.95, [6.313752, 2.919986, 2.131847, 2.015048, 1.833113, 1.812461, 1.729133, 1.724718, 1.699127,
    1.697261, 1.681952, 1.676551, 1.670649, 1.660391, 1.657651]],
  [0.975, [12.706205, 4.302653, 2.776445, 2.570582, 2.262157, 2.228139, 2.093024, 2.085963, 2.04523,
    2.042272, 2.018082, 2.009575, 2.000298, 1.984217, 1.97993]],
  [0.99, [31.820516, 6.964557, 3.746947, 3.36493, 2.821438, 2.763769, 2.539483, 2.527977, 2.462021,
    2.457262, 2.41847, 2.404892, 2.390119, 2.364606, 2.357825]],
  [0.995, [63.656741, 9.924843, 4.604095, 4.032143, 3.249836, 3.169273, 2.860935, 2.84534, 2.756386,
    2.749996, 2.698066, 2.679952, 2.660283, 2.626405, 2.617421]],
];

describe("studentTQuantile", () => {
  it.each(table)("table of p = %f", (p, row) => {
    row.forEach((expected, i) => {
      const found = studentTQuantile(p, degrees[i]!);
      expect(Math.abs(found - expected)).toBeLessThanOrEqual(5.1e-7);
      expect(studentTQuantile(1 - p, degrees[i]!)).toBeCloseTo(-found, 9);
    });
  });

  // mpmath 1.3.0, root of the regularised incomplete beta with 30 digits. Near
  // 1/2 the spacing of p itself (5e-17 of 1e-5) leaves eleven digits.
  // prettier-ignore
  it.each([
    [0.001, 0.5, -102849.11563017555], [1e-10, 1.5, -2422663.101134394], [0.4, 2.3, -0.28396571289827327],
    [0.025, 3.7, -2.8675207071911895], [0.49999, 10, -2.5699780352442555e-5],
    [1e-6, 25.5, -6.112518136857524], [0.005, 150, -2.6090025658655382],
  ])("p = %f with %f degrees of freedom", (p, df, expected) => {
    expect(correctDigits(studentTQuantile(p, df), expected)).toBeGreaterThanOrEqual(11);
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
  // mpmath 1.3.0 with 30 to 40 digits (incomplete beta; from 1e4 degrees of freedom by quadrature of the density).
  // prettier-ignore
  it.each([
    [-0.1, 0.5, 0.4731658105643032], [-2, 1, 0.14758361765043326], [-1e6, 1.5, 3.770852432013216e-10],
    [-1, 3.7, 0.18907069988022623], [-3, 7.25, 0.009567066496584542], [-10, 12, 1.7906618438361874e-7],
    [-1e-8, 5, 0.4999999962039331], [-2, 34.5, 0.026711022478113702], [-2.1, 1000, 0.01798943715539098],
    [-4, 12345.6, 3.1855908492959775e-5], [-1, 1e6, 0.15865537491678908], [-5, 1e6, 2.866998935445371e-7],
    [-2, 1e9, 0.022750132083156623],
  ])("at %f with %f degrees of freedom", (t, df, expected) => {
    expect(correctDigits(studentTCdf(t, df), expected)).toBeGreaterThanOrEqual(12);
    expect(studentTCdf(-t, df)).toBeCloseTo(1 - expected, 14);
  });

  it("is the normal one with infinite degrees of freedom", () => {
    expect(studentTCdf(-1.3, Infinity)).toBe(normalCdf(-1.3));
    expect(studentTCdf(1, -1)).toBeNaN();
  });
});
