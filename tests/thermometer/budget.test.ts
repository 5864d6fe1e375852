import { describe, expect, it } from "vitest";
import { celsiusDifference } from "../../src/quantity.ts";
import {
  assumedThermometer,
  correctedThermometer,
  resolutionUncertainty,
  specifiedThermometer,
} from "../../src/thermometer/budget.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { rectangularBudget } from "../reference/values/uncertainty.ts";

describeReferences(rectangularBudget);

it("has no uncertainty without a display step", () => {
  expect(resolutionUncertainty(0)).toBe(0);
});

describe("thermometer statements", () => {
  it("keeps a specification's half-width and where it comes from", () => {
    const stated = specifiedThermometer(celsiusDifference(0.5), "stated");
    expect(stated).toMatchObject({ correction: 0, accuracy: 0.5, from: "stated" });
    expect(stated.standardUncertainty).toBeCloseTo(0.5 / Math.sqrt(3), 12);
  });

  it("takes a correction with its own standard uncertainty", () => {
    const checked = correctedThermometer(celsiusDifference(-0.4), celsiusDifference(0.08));
    expect(checked).toEqual({
      correction: -0.4,
      standardUncertainty: 0.08,
      from: "stated",
      accuracy: null,
    });
  });

  it("marks what nobody said as assumed", () => {
    expect(assumedThermometer.from).toBe("assumed");
    expect(assumedThermometer.accuracy).toBe(1);
  });
});
