import { describe, expect, it } from "vitest";
import { bestThermometer } from "../../src/advice/best-thermometer.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";
import { constantCorrection } from "../../src/thermometer/constant-correction.ts";
import type { CorrectionModel } from "../../src/thermometer/correction-model.ts";

// Constructed thermometers.
const window = { low: 37, high: 39 };

/** Known to `uncertainty` at every reading. */
const known = (id: string, uncertainty: number) => ({
  id,
  model: constantCorrection(
    correctedThermometer(celsiusDifference(0.2), celsiusDifference(uncertainty)),
  ),
});

/** Checked at `checked`, and 0.02 degC less sure for each degC away from there. */
const checkedAt = (id: string, checked: number) => {
  const { components, ...rest } = known(id, 0.05).model;
  const model: CorrectionModel = {
    ...rest,
    components: [
      ...components,
      {
        source: "unchecked scale",
        shape: "distance",
        checked: [checked],
        to: "nearest",
        free: 0,
        perDegree: 0.02,
        most: null,
        degreesOfFreedom: Infinity,
        from: "assumed",
      },
    ],
  };
  return { id, model };
};

describe("bestThermometer", () => {
  it("has none in a kitchen without one", () => {
    expect(bestThermometer({ thermometers: [] }, 38, window)).toBeNull();
  });

  it("is the one with the least standard uncertainty, wherever it stands in the list", () => {
    const all = [known("a", 0.3), known("b", 0.1), known("c", 0.2)];
    for (const thermometers of [all, all.toReversed()]) {
      const found = bestThermometer({ thermometers }, 38, window)!;
      expect(found.id).toBe("b");
      expect(found.standardUncertainty).toBeCloseTo(0.1, 12);
    }
  });

  it("depends on the level: near where each was checked", () => {
    const thermometers = [checkedAt("ice", 0), checkedAt("bath", 38), known("plain", 0.15)];
    expect(bestThermometer({ thermometers }, 1, window)!.id).toBe("ice");
    expect(bestThermometer({ thermometers }, 38, window)!.id).toBe("bath");
    expect(bestThermometer({ thermometers }, 19, window)!.id).toBe("plain");
    const found = bestThermometer({ thermometers }, 41, window)!;
    expect(found.standardUncertainty).toBeCloseTo(Math.hypot(0.05, 3 * 0.02), 12);
  });

  it("compares a specification by its standard uncertainty, A / sqrt 3", () => {
    // JCGM 100:2008, 4.3.7: 0.5 / sqrt 3 = 0.289 of a rectangle of +-0.5.
    const specified = {
      id: "spec",
      model: constantCorrection(specifiedThermometer(celsiusDifference(0.5), "stated")),
    };
    const with28 = { thermometers: [specified, known("k", 0.28)] };
    const with30 = { thermometers: [known("k", 0.3), specified] };
    expect(bestThermometer(with28, 38, window)!.id).toBe("k");
    expect(bestThermometer(with30, 38, window)!.id).toBe("spec");
  });

  it.each([
    [0.127, "good"],
    [0.128, "usable"],
    [0.255, "usable"],
    [0.256, "too coarse"],
  ] as const)("judges u = %s for a window of 2 degC: %s", (uncertainty, word) => {
    // 2 x 1.95996 u against a quarter (u = 0.12755) and half (u = 0.25511) of the window.
    const thermometers = [known("k", uncertainty)];
    expect(bestThermometer({ thermometers }, 38, window)!.word).toBe(word);
  });
});
