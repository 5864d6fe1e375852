import { describe, expect, it } from "vitest";
import { thermometerDoubt } from "../../src/culture/thermometer-doubt.ts";
import { pooledThermometer } from "../../src/culture/pooled-thermometer.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";

const checked = (thermometerId: string | null, uncertainty: number, share: number) => ({
  thermometerId,
  thermometer: correctedThermometer(celsiusDifference(0), celsiusDifference(uncertainty)),
  share,
});
const specified = (thermometerId: string | null, accuracy: number, share: number) => ({
  thermometerId,
  thermometer: specifiedThermometer(celsiusDifference(accuracy), "stated"),
  share,
});

/** Worked by hand from JCGM 100:2008, 5.1.2 and 5.2.2. */
describe("thermometerDoubt", () => {
  it("adds one thermometer's shares before it squares, and squares of different ones", () => {
    // (0.5 + 0.2) 0.3 = 0.21 and 0.3 x 0.4 = 0.12: sqrt(0.0441 + 0.0144) = 0.241868.
    const found = thermometerDoubt([
      checked("a", 0.3, 0.5),
      checked("b", 0.4, 0.3),
      checked("a", 0.3, 0.2),
    ]);
    expect(found.standardUncertainty).toBeCloseTo(0.241868, 6);
    expect(found.halfWidth).toBeNull();
  });

  it("cancels in a difference of two tests by one thermometer, and doubles between two", () => {
    expect(
      thermometerDoubt([checked("a", 0.3, 1), checked("a", 0.3, -1)]).standardUncertainty,
    ).toBeCloseTo(0, 12);
    expect(
      thermometerDoubt([checked("a", 0.3, 1), checked("b", 0.3, -1)]).standardUncertainty,
    ).toBeCloseTo(0.3 * Math.SQRT2, 12);
  });

  it("agrees with the thermometers pooled for a mean of tests that count alike", () => {
    const tests = [checked("a", 0.2, 1 / 3), specified("b", 0.5, 1 / 3), checked("a", 0.2, 1 / 3)];
    expect(thermometerDoubt(tests).standardUncertainty).toBeCloseTo(
      pooledThermometer(tests).standardUncertainty,
      12,
    );
  });

  it("keeps a rectangle of one thermometer only", () => {
    expect(
      thermometerDoubt([specified("a", 0.6, 0.5), specified("a", 0.6, 0.5)]).halfWidth,
    ).toBeCloseTo(0.6, 12);
    expect(
      thermometerDoubt([specified("a", 0.6, 0.5), specified("b", 0.6, 0.5)]).halfWidth,
    ).toBeNull();
    expect(
      thermometerDoubt([specified(null, 0.6, 0.5), checked(null, 0.1, 0.5)]).halfWidth,
    ).toBeNull();
  });

  it("leaves nothing open without tests", () => {
    expect(thermometerDoubt([])).toEqual({ standardUncertainty: 0, halfWidth: null });
  });
});
