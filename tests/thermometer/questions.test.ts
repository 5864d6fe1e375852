import { describe, expect, it } from "vitest";
import { checkQuestions } from "../../src/thermometer/questions.ts";
import type { BoilingPlace, ThermometerCheck } from "../../src/thermometer/thermometer.ts";

// All cases are constructed; the limits are common practice, no source.
const facts = { date: null, confirmed: false };
const seaLevel: BoilingPlace = { altitude: 0, pressure: null };
const ice = (...readings: number[]): ThermometerCheck => ({ kind: "ice", readings, ...facts });
const confirmed = (check: ThermometerCheck): ThermometerCheck => ({ ...check, confirmed: true });
const boiling = (readings: readonly number[], place = seaLevel): ThermometerCheck => ({
  kind: "boiling",
  readings,
  place,
  ...facts,
});
const reference = (truth: number, ...readings: number[]): ThermometerCheck => ({
  kind: "reference",
  truth,
  truthUncertainty: null,
  readings,
  ...facts,
});
const asked = (checks: readonly ThermometerCheck[], resolution: number | null = 0.1) =>
  checkQuestions({ resolution, accuracy: null, checks });

describe("questions about ice", () => {
  it.each([
    [6, "ice-too-warm"],
    [2.1, "ice-too-warm"],
    [-2.1, "ice-too-cold"],
    [32, "looks-like-fahrenheit"],
    [33.4, "looks-like-fahrenheit"],
    [25, "ice-too-warm"],
  ])("%d degC: %s", (reading, code) => {
    expect(asked([ice(reading)])).toEqual([{ check: 0, leftOut: true, code, reading }]);
  });

  it.each([0, 1.9, -1.9])("none at %d degC", (reading) => {
    expect(asked([ice(reading)])).toEqual([]);
  });
});

describe("questions about boiling water", () => {
  it("asks for 3,000 m where water boils at 90 degC", () => {
    const [question] = asked([boiling([90])]);
    expect(question).toMatchObject({ check: 0, leftOut: true, code: "boiling-too-cold" });
    if (question?.code !== "boiling-too-cold") throw new Error("another question");
    // US Standard Atmosphere 1976 and IAPWS-IF97 (iapws 1.5.2): 89.9770 degC at 3,000 m and 99.9743
    // at sea level; 3.3 degC per 1,000 m, so 0.023 degC are 7 m.
    expect(Math.abs(question.altitude! - 2993)).toBeLessThan(1);
    expect(question.expected).toBeCloseTo(99.9743, 3);
  });

  it("has no altitude for water that boils where nobody cooks", () => {
    expect(asked([boiling([70])])).toMatchObject([{ code: "boiling-too-cold", altitude: null }]);
  });

  it("questions 101.3 degC at sea level: the bottom of the pot", () => {
    expect(asked([boiling([101.3])])).toMatchObject([
      { code: "boiling-too-hot", reading: 101.3, leftOut: true },
    ]);
  });

  it.each([97.1, 99.97, 100.9])("none at %d degC at sea level", (reading) => {
    expect(asked([boiling([reading])])).toEqual([]);
  });

  it.each([
    [212, seaLevel],
    [194, { altitude: 3000, pressure: null }],
    [211, { altitude: null, pressure: null }],
  ])("%d looks like degF", (reading, place) => {
    expect(asked([boiling([reading], place)])).toMatchObject([{ code: "looks-like-fahrenheit" }]);
  });

  it("needs to know the place, even of a confirmed check", () => {
    const check = boiling([98], { altitude: null, pressure: null });
    const expected = [{ check: 0, leftOut: true, code: "boiling-place-unknown" }];
    expect(asked([check])).toEqual(expected);
    expect(asked([confirmed(check)])).toEqual(expected);
  });
});

describe("questions about a comparison", () => {
  it("asks when it is off by more than 5 degC", () => {
    expect(asked([reference(38, 43.2)])).toEqual([
      { check: 0, leftOut: true, code: "reference-far-off", reading: 43.2, truth: 38 },
    ]);
    expect(asked([reference(38, 42.9)])).toEqual([]);
    expect(asked([reference(38, 100.4)])).toMatchObject([{ code: "looks-like-fahrenheit" }]);
  });
});

describe("questions about the spread of one check", () => {
  it("asks beyond 0.5 degC, or five steps of a coarse display", () => {
    expect(asked([reference(38, 38.1, 38.7)])).toMatchObject([{ code: "not-settled" }]);
    expect(asked([reference(38, 38.1, 38.6)])).toEqual([]);
    expect(asked([reference(38, 36, 40)], 1)).toEqual([]);
    expect(asked([reference(38, 35, 41)], 1)).toMatchObject([{ code: "not-settled", spread: 6 }]);
  });

  it("may ask twice about one check", () => {
    expect(asked([ice(4, 5)]).map((question) => question.code)).toEqual([
      "ice-too-warm",
      "not-settled",
    ]);
  });
});

describe("questions about the scale", () => {
  it("names both of two checks that cannot both be right", () => {
    const found = asked([ice(1.5), boiling([98.7])]);
    expect(found).toMatchObject([
      { check: 0, code: "scale-off", leftOut: true },
      { check: 1, code: "scale-off", leftOut: true },
    ]);
    // By hand: corrections -1.5 and 99.974 - 98.7 = 1.274 over 97.2 degC.
    if (found[0]?.code !== "scale-off") throw new Error("another question");
    expect(found[0].perHundred).toBeCloseTo(2.854, 3);
  });

  it("does not ask again about what is left out already", () => {
    expect(asked([ice(6), boiling([99.9])]).map((question) => question.code)).toEqual([
      "ice-too-warm",
    ]);
  });

  it("keeps the question of confirmed checks, and the checks", () => {
    const checks = [ice(1.5), boiling([98.7])];
    expect(asked(checks.map(confirmed))).toMatchObject([{ leftOut: false }, { leftOut: false }]);
  });
});

it("asks nothing about a thermometer without checks, or a check without readings", () => {
  expect(asked([])).toEqual([]);
  expect(asked([ice()])).toEqual([]);
});
