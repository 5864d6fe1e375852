import { describe, expect, it } from "vitest";
import { componentUncertainty } from "../../src/thermometer/component-uncertainty.ts";
import { departuresFromLine, uncheckedScale } from "../../src/thermometer/unchecked-scale.ts";

describe("uncheckedScale", () => {
  it("grows by half a degree in 100 from the check", () => {
    const doubt = uncheckedScale(0, null);
    expect(componentUncertainty(doubt, 0, 0)).toBe(0);
    expect(componentUncertainty(doubt, 0, 38)).toBeCloseTo(0.19, 12);
    expect(componentUncertainty(doubt, 0, -20)).toBeCloseTo(0.1, 12);
  });

  it("leaves no more open than a specification does", () => {
    const doubt = uncheckedScale(0, 0.2);
    expect(componentUncertainty(doubt, 0, 10)).toBeCloseTo(0.05, 12);
    // A rectangular half-width of 0.2 (JCGM 100, 4.3.7).
    expect(componentUncertainty(doubt, 0, 90)).toBeCloseTo(0.2 / Math.sqrt(3), 12);
  });
});

const at = (reading: number) =>
  departuresFromLine([0, 98]).map((one) => componentUncertainty(one, 0, reading));

describe("departuresFromLine", () => {
  it("adds nothing near a check", () => {
    for (const reading of [-5, 0, 4, 98, 103]) expect(at(reading)).toEqual([0, 0]);
  });

  it("lets the line bend by a rectangular 0.1 degC between checks", () => {
    expect(at(10)[0]).toBeCloseTo(0.1 / Math.sqrt(3), 12);
    expect(at(49)[0]).toBeCloseTo(0.1 / Math.sqrt(3), 12);
    expect(at(7.5)[0]).toBeCloseTo(0.05 / Math.sqrt(3), 12);
    expect(at(49)[1]).toBe(0);
  });

  it("trusts the scale less and less beyond the checks", () => {
    expect(at(123)[1]).toBeCloseTo(0.1, 12);
    expect(at(223)[1]).toBeCloseTo(0.6, 12);
  });
});
