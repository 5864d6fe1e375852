import { describe, expect, it } from "vitest";
import { assumedThermometer } from "../../src/thermometer/budget.ts";
import { constantCorrection } from "../../src/thermometer/constant-correction.ts";
import {
  applyCorrection,
  correctionAt,
  doubtsAt,
  statementAt,
} from "../../src/thermometer/correction-at.ts";
import type {
  CorrectionComponent,
  CorrectionModel,
} from "../../src/thermometer/correction-model.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { effectiveDegrees } from "../reference/values/uncertainty.ts";

describeReferences(effectiveDegrees);

const component = (standardUncertainty: number, degreesOfFreedom: number): CorrectionComponent => ({
  source: "statement",
  shape: "line",
  atCentre: standardUncertainty,
  perDegree: 0,
  correlation: 0,
  degreesOfFreedom,
  from: "measured",
});

// The worked example of JCGM 100:2008, G.4.1, taken as three sources of one correction: 0.25, 0.57
// and 0.82 with 9, 4 and 14 degrees of freedom, among the reference values.
const model: CorrectionModel = {
  centre: 50,
  correction: -0.8,
  slope: -0.03,
  components: [component(0.25, 9), component(0.57, 4), component(0.82, 14)],
  from: "measured",
  accuracy: null,
};

describe("correctionAt", () => {
  it("adds sources in quadrature with their effective degrees of freedom", () => {
    const found = correctionAt(model, 40);
    expect(found.reading).toBe(40);
    expect(found.correction).toBeCloseTo(-0.5, 14);
    // t(0.975) is 2.093024 at 19 degrees of freedom: a thousandth fewer moves it by 1e-5.
    expect(found.expanded).toBeCloseTo(2.093024 * 1.029466, 4);
  });

  it("keeps the 95 % interval of a bare specification within it", () => {
    const found = correctionAt(constantCorrection(assumedThermometer), 38);
    // A rectangle of +-1: 95 % of it lie within +-0.95, and u = 1 / sqrt(3).
    expect(found.expanded).toBeCloseTo(0.95, 12);
    expect(found.standardUncertainty).toBeCloseTo(0.57735, 5);
  });

  it("knows a correction without doubt exactly", () => {
    expect(correctionAt({ ...model, components: [] }, 40)).toMatchObject({
      standardUncertainty: 0,
      degreesOfFreedom: Infinity,
      expanded: 0,
    });
  });
});

describe("doubtsAt", () => {
  it("tells each source once, the largest first", () => {
    // Constructed: 0.3 and 0.4 of one source make 0.5, less than the other's 0.6.
    const two = { ...component(0.6, 9), source: "linearity" } as const;
    const parts = { ...model, components: [component(0.3, 9), two, component(0.4, 9)] };
    expect(doubtsAt(parts, 40)).toEqual([
      { source: "linearity", from: "measured", standardUncertainty: 0.6 },
      { source: "statement", from: "measured", standardUncertainty: expect.closeTo(0.5, 12) },
    ]);
    expect(doubtsAt({ ...model, components: [] }, 40)).toEqual([]);
  });
});

describe("applyCorrection", () => {
  it("corrects each reading by its own correction and leaves the readings alone", () => {
    const readings = Float64Array.of(40, 50, NaN, 60);
    const corrected = applyCorrection(model, readings);
    expect([...corrected]).toEqual([39.5, 49.2, NaN, 58.9]);
    expect([...readings]).toEqual([40, 50, NaN, 60]);
    for (const at of [0, 1, 3])
      expect(corrected[at]).toBeCloseTo(
        readings[at]! + correctionAt(model, readings[at]!).correction,
        12,
      );
  });
});

describe("statementAt", () => {
  it("states correction and doubt at one reading", () => {
    expect(statementAt(model, 40)).toMatchObject({ from: "measured", accuracy: null });
    expect(statementAt(model, 60).correction).toBeCloseTo(-1.1, 14);
    expect(statementAt(model, 60).standardUncertainty).toBeCloseTo(1.029466, 6);
  });
});
