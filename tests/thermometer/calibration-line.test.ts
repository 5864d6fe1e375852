import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitCorrectionLine, fitOffset } from "../../src/thermometer/calibration-line.ts";
import { doubtOf, guideCorrections, guideReadings, pointAt } from "./point.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { guideThermometer } from "../reference/values/guide-thermometer.ts";

describeReferences(guideThermometer);

describe("fitCorrectionLine", () => {
  it("has n - 2 degrees of freedom where nothing is in doubt", () => {
    const points = guideReadings.map((t, i) => pointAt(t, t + guideCorrections[i]!));
    expect(fitCorrectionLine(points).degreesOfFreedom).toBe(9);
  });

  // Effective variance fit in Python (NumPy 2.4.6, numpy.linalg.solve of the normal equations,
  // iterated): readings good to 0.04, truths to 0.05, 0.1, 0.1 and 0.08. Constructed.
  it("weighs truth and reading as a reference computation does", () => {
    const truths = [0, 30, 60, 98.3];
    const doubts = [0.05, 0.1, 0.1, 0.08];
    const line = fitCorrectionLine(
      [0.3, 30.4, 60.3, 98.7].map((reading, i) =>
        pointAt(reading, truths[i]!, doubtOf("reading", 0.04), doubtOf("truth", doubts[i]!)),
      ),
    );
    expect(1 + line.slope).toBeCloseTo(0.9991734793857885, 12);
    const at38 = line.correction + line.slope * (38 - line.centre);
    expect(at38).toBeCloseTo(-0.3395356719624161, 12);
  });

  it("passes through two points whatever their doubts", () => {
    const uncertainty = fc.double({ min: 0, max: 0.5, noNaN: true });
    const level = fc.double({ min: -2, max: 2, noNaN: true });
    fc.assert(
      fc.property(level, level, uncertainty, uncertainty, (ice, boil, first, second) => {
        const points = [
          pointAt(ice, 0, doubtOf("reading", first)),
          pointAt(100 + boil, 99.97, doubtOf("truth", second)),
        ];
        const line = fitCorrectionLine(points);
        for (const { reading, truth } of points)
          expect(reading + line.correction + line.slope * (reading - line.centre)).toBeCloseTo(
            truth,
            9,
          );
        expect(line.degreesOfFreedom).toBe(0);
      }),
    );
  });

  it("tells how far an error of each point reaches", () => {
    const corrections = [0.3, -0.1, 0.4];
    const points = (nudged: number) =>
      [0, 40, 90].map((x, i) =>
        pointAt(
          x,
          x + corrections[i]! + (i === nudged ? 1e-3 : 0),
          doubtOf("truth", 0.1 * (i + 1)),
        ),
      );
    const line = fitCorrectionLine(points(-1));
    line.points.forEach(({ atCentre, perDegree }, i) => {
      const moved = fitCorrectionLine(points(i));
      // The fit is linear in the truths: a nudge of 0.001, twelve digits kept.
      expect((moved.slope - line.slope) / 1e-3).toBeCloseTo(perDegree, 9);
      expect((moved.correction - line.correction) / 1e-3).toBeCloseTo(atCentre, 9);
    });
  });
});

describe("fitOffset", () => {
  it("is the weighted mean of the corrections", () => {
    const points = [pointAt(0.2, 0, doubtOf("truth", 0.1)), pointAt(0.5, 0, doubtOf("truth", 0.2))];
    const line = fitOffset(points);
    // Weights 100 and 25: -(0.2 x 100 + 0.5 x 25) / 125.
    expect(line.correction).toBeCloseTo(-0.26, 12);
    expect(line).toMatchObject({ slope: 0, degreesOfFreedom: 1 });
    expect(line.points.map((point) => point.perDegree)).toEqual([0, 0]);
    expect(line.points[0]!.atCentre).toBeCloseTo(0.8, 12);
  });

  it("lets an exact point outweigh others without going to infinity", () => {
    const line = fitOffset([pointAt(0.2, 0), pointAt(0.5, 0, doubtOf("truth", 0.2))]);
    expect(line.correction).toBeCloseTo(-0.2, 5);
  });
});
