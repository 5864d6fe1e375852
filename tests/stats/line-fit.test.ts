import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitLine, predictLine } from "../../src/stats/line-fit.ts";
import { studentTQuantile } from "../../src/stats/student-t.ts";
import { correctDigits } from "./correct-digits.ts";
import { norris } from "./nist-data.ts";

describe("fitLine on NIST StRD Norris", () => {
  const fit = fitLine(norris.x, norris.y);
  it.each([
    ["B0", fit.intercept, -0.262323073774029],
    ["B1", fit.slope, 1.00211681802045],
    ["sd of B0", fit.interceptUncertainty, 0.232818234301152],
    ["sd of B1", fit.slopeUncertainty, 0.429796848199937e-3],
    ["residual sd", fit.residualStandardDeviation, 0.884796396144373],
    ["residual sum of squares", fit.residualSumOfSquares, 26.6173985294224],
  ])("%s to nine digits and more", (_, found, certified) => {
    expect(correctDigits(found, certified)).toBeGreaterThanOrEqual(11);
  });

  it("has n - 2 degrees of freedom", () => expect(fit.degreesOfFreedom).toBe(34));
});

describe("thermometer calibration of JCGM 100:2008, H.3", () => {
  // Readings and indicated minus true, degC; the line is in t - 20 degC.
  // prettier-ignore
  const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
  // prettier-ignore
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];
  const fit = fitLine(
    t.map((value) => value - 20),
    b,
  );

  // Printed in H.3, so half of the last printed decimal.
  it("gives the printed figures", () => {
    expect(fit.intercept).toBeCloseTo(-0.1712, 4);
    expect(fit.interceptUncertainty).toBeCloseTo(0.0029, 4);
    expect(fit.slope).toBeCloseTo(0.00218, 5);
    expect(fit.slopeUncertainty).toBeCloseTo(0.00067, 5);
    const correlation = fit.covariance / (fit.interceptUncertainty * fit.slopeUncertainty);
    expect(correlation).toBeCloseTo(-0.93, 3);
    const at30 = predictLine(fit, 10);
    expect(at30.value).toBeCloseTo(-0.1494, 4);
    expect(at30.standardUncertainty).toBeCloseTo(0.0041, 4);
  });

  // The same by mpmath 1.3.0 with 40 digits; tolerance ten of the last digit given.
  it("gives the unrounded figures", () => {
    expect(fit.intercept).toBeCloseTo(-0.171203790131, 11);
    expect(fit.slope).toBeCloseTo(0.00218269773989, 13);
    expect(fit.interceptUncertainty).toBeCloseTo(0.002877597835, 11);
    expect(fit.slopeUncertainty).toBeCloseTo(0.0006679387732, 12);
    expect(fit.residualStandardDeviation).toBeCloseTo(0.003497563964, 11);
    const at30 = predictLine(fit, 10);
    expect(at30.value).toBeCloseTo(-0.1493768127, 9);
    expect(at30.standardUncertainty).toBeCloseTo(0.004138595753, 11);
    expect(studentTQuantile(0.975, 9) * at30.standardUncertainty).toBeCloseTo(0.009362154, 8);
  });
});

describe("fitLine with weights", () => {
  // NumPy 2.4.6, numpy.polyfit(x, y, 1, w=sqrt(weights), cov=True).
  const fit = fitLine(
    [1, 2, 3, 4, 6, 9],
    [2.1, 3.9, 6.2, 7.8, 12.5, 17.6],
    [1, 2, 0.5, 1, 4, 0.25],
  );
  it("agrees with a reference library", () => {
    expect(fit.intercept).toBeCloseTo(-0.14256707759245843, 12);
    expect(fit.slope).toBeCloseTo(2.080203045685279, 12);
    expect(fit.slopeUncertainty ** 2).toBeCloseTo(0.0034661970897766647, 12);
    expect(fit.interceptUncertainty ** 2).toBeCloseTo(0.07675150698791185, 12);
    expect(fit.covariance).toBeCloseTo(-0.014558027777061992, 12);
  });

  it("does not count readings without weight", () => {
    const without = fitLine([0, 1, 2, 50], [1, 3, 5.3, -9], [1, 1, 1, 0]);
    expect(without).toEqual(fitLine([0, 1, 2], [1, 3, 5.3]));
  });
});

describe("fitLine at its limits", () => {
  it("draws a line through two points, its uncertainty unknown", () => {
    const fit = fitLine([0, 2], [40, 41]);
    expect([fit.intercept, fit.slope, fit.degreesOfFreedom]).toEqual([40, 0.5, 0]);
    expect(fit.slopeUncertainty).toBeNaN();
  });

  it("finds no slope where all x are equal", () => {
    expect(fitLine([5, 5, 5], [40, 41, 42]).slope).toBeNaN();
    expect(fitLine([], []).slope).toBeNaN();
  });

  it("follows a shift of x without losing digits", () => {
    const reading = fc.integer({ min: 3500, max: 4500 });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 4, maxLength: 50 }), (readings) => {
        const y = readings.map((value) => value / 100);
        const near = fitLine(
          y.map((_, i) => i),
          y,
        );
        const far = fitLine(
          y.map((_, i) => i + 2 ** 31),
          y,
        );
        expect(far.slope).toBeCloseTo(near.slope, 10);
        expect(far.slopeUncertainty).toBeCloseTo(near.slopeUncertainty, 10);
        const there = predictLine(far, 2 ** 31 + 2).standardUncertainty;
        expect(there).toBeCloseTo(predictLine(near, 2).standardUncertainty, 10);
      }),
    );
  });
});
