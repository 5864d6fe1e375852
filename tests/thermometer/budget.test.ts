import { describe, expect, it } from "vitest";
import { celsiusDifference } from "../../src/quantity.ts";
import {
  assumedThermometer,
  correctedThermometer,
  rectangularUncertainty,
  resolutionUncertainty,
  specifiedThermometer,
} from "../../src/thermometer/budget.ts";

describe("rectangular and resolution uncertainty", () => {
  // DKD-R 5-7, humidity example of a climatic chamber: half-widths 1.8, 1.2, 0.44 and a full
  // width of 1.0 give 1.039230, 0.692820, 0.254034 and 0.288675 (arithmetic; rounded, so 1e-6).
  it.each([
    [1.8, 1.03923],
    [1.2, 0.69282],
    [0.44, 0.254034],
  ])("half-width %d gives %d", (halfWidth, expected) => {
    expect(rectangularUncertainty(halfWidth)).toBeCloseTo(expected, 5);
  });

  it("takes a display step as the full width of a rectangle", () => {
    expect(resolutionUncertainty(1)).toBeCloseTo(0.288675, 6);
    expect(resolutionUncertainty(0)).toBe(0);
  });
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
