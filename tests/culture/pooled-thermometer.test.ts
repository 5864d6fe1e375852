import { describe, expect, it } from "vitest";
import { pooledThermometer } from "../../src/culture/pooled-thermometer.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";

const checked = (thermometerId: string | null, uncertainty: number, correction = 0) => ({
  thermometerId,
  thermometer: correctedThermometer(celsiusDifference(correction), celsiusDifference(uncertainty)),
});
const specified = (thermometerId: string | null, accuracy: number) => ({
  thermometerId,
  thermometer: specifiedThermometer(celsiusDifference(accuracy), "stated"),
});

/** Worked by hand from JCGM 100:2008, 5.1.2 and 5.2.2. */
describe("pooledThermometer", () => {
  it("gives a single test's thermometer back as it is", () => {
    const one = specified("pen", 0.5);
    expect(pooledThermometer([one])).toBe(one.thermometer);
  });

  it("counts one thermometer once, however many tests it took", () => {
    const found = pooledThermometer([
      checked("pen", 0.2),
      checked("pen", 0.2),
      checked("pen", 0.2),
    ]);
    expect(found.standardUncertainty).toBeCloseTo(0.2, 12);
  });

  it("combines different thermometers as independent parts of the mean", () => {
    // Three tests: the first thermometer's share is 2/3, the other's 1/3:
    // sqrt((2/3 x 0.3)^2 + (1/3 x 0.6)^2) = sqrt(0.04 + 0.04) = 0.28284.
    const found = pooledThermometer([checked("a", 0.3), checked("b", 0.6), checked("a", 0.3)]);
    expect(found.standardUncertainty).toBeCloseTo(0.2828427, 6);
    expect(
      pooledThermometer([checked("a", 0.3), checked("b", 0.3)]).standardUncertainty,
    ).toBeCloseTo(0.3 / Math.SQRT2, 12);
  });

  it("takes thermometers nobody named for one and the same", () => {
    const found = pooledThermometer([checked(null, 0.3), checked(null, 0.3)]);
    expect(found.standardUncertainty).toBeCloseTo(0.3, 12);
  });

  it("keeps a specification's rectangle for one thermometer only", () => {
    const same = pooledThermometer([specified("a", 0.6), specified("a", 0.6)]);
    expect(same.accuracy).toBeCloseTo(0.6, 12);
    expect(same.standardUncertainty).toBeCloseTo(0.6 / Math.sqrt(3), 12);
    const two = pooledThermometer([specified("a", 0.6), specified("b", 0.6)]);
    expect(two.accuracy).toBeNull();
    expect(two.standardUncertainty).toBeCloseTo(0.6 / Math.sqrt(6), 12);
    expect(pooledThermometer([specified("a", 0.6), checked("a", 0.1)]).accuracy).toBeNull();
  });

  it("is as well founded as its least founded part", () => {
    const assumed = {
      thermometerId: null,
      thermometer: specifiedThermometer(celsiusDifference(1), "assumed"),
    };
    expect(pooledThermometer([checked("a", 0.1), assumed]).from).toBe("assumed");
  });
});
