import { describe, expect, it } from "vitest";
import { celsiusDifference } from "../../src/quantity.ts";
import { fitLine, predictLine } from "../../src/stats/line-fit.ts";
import { assumedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";
import { correctionAt, statementAt } from "../../src/thermometer/correction-at.ts";
import { thermometerModel } from "../../src/thermometer/thermometer-model.ts";
import type { Thermometer, ThermometerCheck } from "../../src/thermometer/thermometer.ts";
import { guideCorrections, guideReadings } from "./point.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { guideThermometer } from "../reference/values/guide-thermometer.ts";

describeReferences(guideThermometer);

const facts = { date: null, confirmed: false };
const ice = (...readings: number[]): ThermometerCheck => ({ kind: "ice", readings, ...facts });
const boiling = (altitude: number, ...readings: number[]): ThermometerCheck => ({
  kind: "boiling",
  readings,
  place: { altitude, pressure: null },
  ...facts,
});
const reference = (
  truth: number,
  truthUncertainty: number | null,
  ...readings: number[]
): ThermometerCheck => ({ kind: "reference", truth, truthUncertainty, readings, ...facts });
const stoodBy = (check: ThermometerCheck): ThermometerCheck => ({ ...check, confirmed: true });
const thermometer = (
  checks: readonly ThermometerCheck[],
  accuracy: number | null = null,
  resolution: number | null = 0.1,
): Thermometer => ({ resolution, accuracy, checks });

describe("the thermometer of JCGM 100:2008, H.3, compared with a faultless reference", () => {
  const { model, used, questions } = thermometerModel(
    thermometer(
      guideReadings.map((t, i) => reference(t + guideCorrections[i]!, 0, t)),
      null,
      0,
    ),
  );
  it("uses every check and questions none", () => {
    expect(used).toHaveLength(11);
    expect(questions).toEqual([]);
  });

  it("knows its correction with nine degrees of freedom", () => {
    expect(correctionAt(model, 30).degreesOfFreedom).toBeCloseTo(9, 9);
  });

  it("agrees with the fitted line within its neighbourhood", () => {
    const fit = fitLine(guideReadings, guideCorrections);
    for (const reading of [17, 20, 24, 28, 31]) {
      const line = predictLine(fit, reading);
      expect(correctionAt(model, reading).correction).toBeCloseTo(line.value, 12);
      expect(correctionAt(model, reading).standardUncertainty).toBeCloseTo(
        line.standardUncertainty,
        12,
      );
    }
  });

  it("is less sure than that far beyond its checks", () => {
    const fit = fitLine(guideReadings, guideCorrections);
    expect(correctionAt(model, 43).standardUncertainty).toBeGreaterThan(
      2 * predictLine(fit, 43).standardUncertainty,
    );
  });
});

describe("thermometerModel without a usable check", () => {
  it("is the specification, or what is assumed", () => {
    const specified = thermometerModel(thermometer([], 0.5));
    expect(statementAt(specified.model, 38)).toEqual(
      specifiedThermometer(celsiusDifference(0.5), "stated"),
    );
    expect(statementAt(thermometerModel(thermometer([])).model, 38)).toEqual(assumedThermometer);
  });

  it("is so too where every check is left out", () => {
    const found = thermometerModel(thermometer([ice(6)], 0.5));
    expect(found.used).toEqual([]);
    expect(found.model.from).toBe("stated");
    expect(found.questions).toHaveLength(1);
  });
});

describe("thermometerModel with checks", () => {
  it("is an offset from ice alone, less sure at 38 degC", () => {
    const { model, used } = thermometerModel(thermometer([ice(0.3, 0.4, 0.3)]));
    expect(used).toEqual([0]);
    expect(correctionAt(model, 38).correction).toBeCloseTo(-1 / 3, 12);
    expect(statementAt(model, 38)).toMatchObject({ from: "measured", accuracy: null });
    const at = (reading: number) => correctionAt(model, reading).standardUncertainty;
    expect(at(0)).toBeLessThan(0.1);
    expect(at(38)).toBeGreaterThan(0.19);
  });

  it("is a line from ice and boiling, through both", () => {
    const { model } = thermometerModel(thermometer([ice(0.4), boiling(500, 98.6)]));
    // US Standard Atmosphere 1976 and IAPWS-IF97 (iapws 1.5.2): 98.3126 degC at 500 m.
    expect(0.4 + correctionAt(model, 0.4).correction).toBeCloseTo(0, 9);
    expect(98.6 + correctionAt(model, 98.6).correction).toBeCloseTo(98.3126, 3);
  });

  it("does not let repetition shrink a reference's own uncertainty", () => {
    const many = Array.from({ length: 12 }, () => reference(38, 0.1, 38.2));
    const { model } = thermometerModel(thermometer(many));
    expect(correctionAt(model, 38.2).standardUncertainty).toBeGreaterThan(0.1);
  });

  it("does not let a second night in ice shrink the bath's doubt, nor make a line of it", () => {
    const { model, used } = thermometerModel(thermometer([ice(0.2), ice(0.3), ice(0.2)]));
    expect(used).toEqual([0, 1, 2]);
    expect(model.slope).toBe(0);
    expect(correctionAt(model, 0.2).standardUncertainty).toBeGreaterThan(0.05);
  });

  it("leaves a doubtful check out until it is confirmed", () => {
    const doubtful = [ice(0.2), boiling(0, 95)];
    expect(thermometerModel(thermometer(doubtful)).used).toEqual([0]);
    const found = thermometerModel(thermometer(doubtful.map(stoodBy)));
    expect(found.used).toEqual([0, 1]);
    expect(found.questions.every((question) => !question.leftOut)).toBe(true);
    expect(found.questions.length).toBeGreaterThan(0);
  });
});
