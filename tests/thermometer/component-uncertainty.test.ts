import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { componentUncertainty } from "../../src/thermometer/component-uncertainty.ts";
import type {
  CorrectionComponent,
  DistanceDoubt,
  LineDoubt,
} from "../../src/thermometer/correction-model.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { guideThermometer } from "../reference/values/guide-thermometer.ts";

describeReferences(guideThermometer);

const facts = { source: "statement", degreesOfFreedom: Infinity, from: "stated" } as const;
const line = (doubt: Omit<LineDoubt, "shape">): CorrectionComponent => ({
  ...facts,
  shape: "line",
  ...doubt,
});
const distance = (doubt: Partial<DistanceDoubt>): CorrectionComponent => ({
  ...facts,
  shape: "distance",
  checked: [0, 100],
  to: "nearest",
  free: 0,
  perDegree: 0.01,
  most: null,
  ...doubt,
});

describe("doubt of a line", () => {
  // JCGM 100:2008, H.3.3 and H.3.4: the line is known at 20 degC with 0.002877597835, its slope with
  // 0.0006679387732, correlated by -0.9304296031 (mpmath 1.3.0); at 30 degC 0.004138595753. Ten
  // digits in, so nine out. That the correlation counts is among the reference values.
  it("heeds the correlation", () => {
    const known = { atCentre: 0.002877597835, perDegree: 0.0006679387732 };
    const heeded = componentUncertainty(line({ ...known, correlation: -0.9304296031 }), 20, 30);
    expect(heeded).toBeCloseTo(0.004138595753, 9);
  });

  it("is what was stated at the centre, to the last bit", () => {
    expect(
      componentUncertainty(line({ atCentre: 0.1, perDegree: 0.3, correlation: 0.7 }), 20, 20),
    ).toBe(0.1);
  });

  it("lets one error shared by all points cancel where it crosses zero", () => {
    const shared = line({ atCentre: 0.2, perDegree: 0.01, correlation: -1 });
    expect(componentUncertainty(shared, 20, 40)).toBeCloseTo(0, 15);
    expect(componentUncertainty(shared, 20, 0)).toBeCloseTo(0.4, 15);
  });

  it("agrees with the written formula and is never negative", () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    const correlations = fc.double({ min: -1, max: 1, noNaN: true });
    const readings = fc.double({ min: -50, max: 150, noNaN: true });
    fc.assert(
      fc.property(part, part, correlations, readings, (atCentre, perDegree, correlation, x) => {
        const found = componentUncertainty(line({ atCentre, perDegree, correlation }), 20, x);
        const b = perDegree * (x - 20);
        expect(found).toBeGreaterThanOrEqual(0);
        expect(found ** 2).toBeCloseTo(atCentre ** 2 + 2 * correlation * atCentre * b + b * b, 9);
      }),
    );
  });
});

describe("doubt that grows with distance", () => {
  it("starts beyond what is free and ends at the most", () => {
    const doubt = distance({ free: 5, most: 0.1 });
    const at = (reading: number) => componentUncertainty(doubt, 0, reading);
    expect([at(0), at(4), at(-5), at(100)]).toEqual([0, 0, 0, 0]);
    expect(at(10)).toBeCloseTo(0.05, 15);
    expect(at(92)).toBeCloseTo(0.03, 15);
    expect(at(50)).toBe(0.1);
  });

  it("may count from the range of the checks", () => {
    const doubt = distance({ to: "range" });
    expect(componentUncertainty(doubt, 0, 50)).toBe(0);
    expect(componentUncertainty(doubt, 0, 110)).toBeCloseTo(0.1, 15);
    expect(componentUncertainty(doubt, 0, -20)).toBeCloseTo(0.2, 15);
  });
});
