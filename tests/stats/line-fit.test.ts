import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitLine, predictLine } from "../../src/stats/line-fit.ts";
import { norris } from "./nist-data.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { guideThermometer } from "../reference/values/guide-thermometer.ts";
import { straightLine } from "../reference/values/linear.ts";

describeReferences(straightLine);
describeReferences(guideThermometer);

it("has n - 2 degrees of freedom", () =>
  expect(fitLine(norris.x, norris.y).degreesOfFreedom).toBe(34));

describe("fitLine with weights", () => {
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
