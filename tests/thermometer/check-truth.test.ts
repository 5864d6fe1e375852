import { describe, expect, it } from "vitest";
import { checkTruth } from "../../src/thermometer/check-truth.ts";

const facts = { readings: [1], date: null, confirmed: false };

const referenceDoubt = (truthUncertainty: number | null) =>
  checkTruth({ kind: "reference", truth: 38, truthUncertainty, ...facts })!.doubts[0];

describe("checkTruth", () => {
  it("is 0 degC in melting ice, the kitchen's bath assumed good to 0.05 degC", () => {
    // 0.00 degC for air-saturated water at 101,325 Pa: ASTM E563, clause 3.
    expect(checkTruth({ kind: "ice", ...facts })).toEqual({
      celsius: 0,
      doubts: [{ source: "ice bath", standardUncertainty: 0.05, from: "assumed" }],
    });
  });

  it("is the boiling point of the place, with the pot's own doubt", () => {
    const place = { altitude: 1000, pressure: null };
    const truth = checkTruth({ kind: "boiling", place, ...facts })!;
    // US Standard Atmosphere 1976 and IAPWS-IF97 by the Python library iapws 1.5.2.
    expect(truth.celsius).toBeCloseTo(96.6493, 3);
    expect(truth.doubts.map((one) => [one.source, one.from])).toEqual([
      ["boiling point", "assumed"],
      ["boiling water", "assumed"],
    ]);
    const read = { altitude: null, pressure: { hectopascal: 990, reduced: "station" } } as const;
    const stated = checkTruth({ kind: "boiling", place: read, ...facts })!;
    expect(stated.doubts[0]).toMatchObject({ source: "boiling point", from: "stated" });
    expect(stated.doubts[0]!.standardUncertainty).toBeLessThan(
      truth.doubts[0]!.standardUncertainty,
    );
  });

  it("is not known where the place is not", () => {
    const place = { altitude: null, pressure: null };
    expect(checkTruth({ kind: "boiling", place, ...facts })).toBeNull();
  });

  it("is what a reference showed, its uncertainty stated or assumed", () => {
    expect(referenceDoubt(0.03)).toMatchObject({ standardUncertainty: 0.03, from: "stated" });
    expect(referenceDoubt(0)).toMatchObject({ standardUncertainty: 0, from: "stated" });
    expect(referenceDoubt(null)).toMatchObject({ standardUncertainty: 0.1, from: "assumed" });
  });
});
