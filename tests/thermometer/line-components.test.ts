import { describe, expect, it } from "vitest";
import { predictLine, fitLine } from "../../src/stats/line-fit.ts";
import { fitCorrectionLine, fitOffset } from "../../src/thermometer/calibration-line.ts";
import type { CheckPoint } from "../../src/thermometer/check-points.ts";
import { componentUncertainty } from "../../src/thermometer/component-uncertainty.ts";
import { lineComponents } from "../../src/thermometer/line-components.ts";
import { doubtOf, guideCorrections, guideReadings, pointAt } from "./point.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { guideThermometer } from "../reference/values/guide-thermometer.ts";

describeReferences(guideThermometer);

/** Stated doubt and residual scatter of the line at a reading. */
const doubtsAt = (points: readonly CheckPoint[], reading: number) => {
  const line = fitCorrectionLine(points);
  const of = (scatter: boolean) =>
    Math.hypot(
      ...lineComponents(line)
        .filter((one) => (one.source === "scatter of checks") === scatter)
        .map((one) => componentUncertainty(one, line.centre, reading)),
    );
  return { line, stated: of(false), scatter: of(true) };
};

describe("two points, ice and boiling", () => {
  // Constructed; T = T_b (r - a) / (b - a) with its five partial derivatives added in quadrature
  // (JCGM 100, 5.1.2), by SciPy 1.17.1 and R 4.2.2; printed to 1e-6.
  it.each([
    [41, 0.4, 98.6, 98.3127, 0.05, 0.05, 0.1, 0.05, 0.02, 40.646595, 0.07514],
    [41, 0, 100, 99.9743, 0.03, 0.03, 0.03, 0.03, 0.01, 40.989463, 0.03937],
    [38.5, -0.3, 99.1, 96.6493, 0.05, 0.06, 0.12, 0.08, 0.02, 37.726286, 0.082624],
    [43.2, 0.5, 100.4, 99.3252, 0.06, 0.05, 0.1, 0.04, 0.01, 42.454315, 0.080622],
  ])("at %d, read %d and %d", (r, a, b, boiling, ur, ua, ub, uBoiling, uIce, truth, u) => {
    const { line, stated } = doubtsAt(
      [
        pointAt(a, 0, doubtOf("reading", ua), doubtOf("truth", uIce)),
        pointAt(b, boiling, doubtOf("reading", ub), doubtOf("truth", uBoiling)),
      ],
      r,
    );
    const found = r + line.correction + line.slope * (r - line.centre);
    expect(Math.abs(found - truth)).toBeLessThan(1e-6);
    // The reading's own doubt passes through the line's slope.
    expect(Math.abs(Math.hypot((1 + line.slope) * ur, stated) - u)).toBeLessThan(1e-6);
  });
});

describe("four points with a reference's common doubt", () => {
  const common = { source: "reference thermometer", common: true } as const;
  const points = (third: number): readonly CheckPoint[] => {
    const truths = [
      doubtOf("truth", 0.05),
      doubtOf("truth", 0.1, common),
      doubtOf("truth", 0.1, common),
      doubtOf("truth", 0.08),
    ];
    return [0.3, 30.4, third, 98.7].map((reading, i) =>
      pointAt(reading, [0, 30, 60, 98.3][i]!, doubtOf("reading", 0.04), truths[i]!),
    );
  };

  // Constructed; covariance G V G' of the weighted fit with the full covariance V of the checks,
  // and residual sum of squares against trace(W R V R'), by NumPy 2.4.6.
  it.each([
    [0, 0.06123048556122881],
    [38, 0.04855172579429701],
    [90, 0.07597856126185104],
  ])("at %d agrees with the matrices", (reading, stated) => {
    const found = doubtsAt(points(60.3), reading);
    expect(found.stated).toBeCloseTo(stated, 12);
    expect(found.scatter).toBe(0);
  });

  it.each([
    [0, 0.06127285872509911, 0.1908253417403859],
    [38, 0.048570456353956626, 0.13909488433814318],
    [90, 0.0760887292825907, 0.23117608127879744],
  ])("at %d is widened by residuals that are too large", (reading, stated, scatter) => {
    const found = doubtsAt(points(59.8), reading);
    expect(found.stated).toBeCloseTo(stated, 12);
    expect(found.scatter).toBeCloseTo(scatter, 12);
  });
});

describe("no stated doubt at all", () => {
  const points = guideReadings.map((t, i) => pointAt(t, t + guideCorrections[i]!));
  const fit = fitLine(guideReadings, guideCorrections);

  it("is residual scatter with nine degrees of freedom, and no stated doubt", () => {
    expect(doubtsAt(points, 30).stated).toBe(0);
    const [only] = lineComponents(fitCorrectionLine(points));
    expect(only).toMatchObject({ source: "scatter of checks", degreesOfFreedom: 9 });
  });

  it.each([15, 24, 38, 90])("is the fitted line's own uncertainty at %d", (reading) => {
    expect(doubtsAt(points, reading).scatter).toBeCloseTo(
      predictLine(fit, reading).standardUncertainty,
      12,
    );
  });
});

const offsetDoubt = (common: boolean, readings: readonly number[]) => {
  const doubt = doubtOf("truth", 0.1, { source: "ice bath", common });
  const line = fitOffset(readings.map((reading) => pointAt(reading, 0, doubt)));
  return lineComponents(line);
};

describe("several checks of one offset", () => {
  it("do not average a common doubt away, but do their own", () => {
    expect(offsetDoubt(true, [0.2, 0.2, 0.2, 0.2])).toMatchObject([{ atCentre: 0.1 }]);
    const [own] = offsetDoubt(false, [0.2, 0.2, 0.2, 0.2]);
    expect(own).toMatchObject({ perDegree: 0 });
    expect(componentUncertainty(own!, 0.2, 0.2)).toBeCloseTo(0.05, 15);
  });

  it("show a common doubt nothing of their scatter", () => {
    // By hand: mean 0.3, s = 0.1, s / sqrt(3).
    const components = offsetDoubt(true, [0.2, 0.3, 0.4]);
    const scatter = components.find((one) => one.source === "scatter of checks")!;
    expect(componentUncertainty(scatter, 0.3, 38)).toBeCloseTo(0.1 / Math.sqrt(3), 12);
    expect(scatter.degreesOfFreedom).toBe(2);
  });
});
