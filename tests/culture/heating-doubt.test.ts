import { describe, expect, it } from "vitest";
import {
  chanceAtLeast,
  expandedAt,
  guardedLevel,
  heatingBudget,
  standardAt,
} from "../../src/culture/heating-doubt.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";
import { constantCorrection } from "../../src/thermometer/constant-correction.ts";
import { thermometerModel } from "../../src/thermometer/thermometer-model.ts";
import { iceChecked } from "./heated-pots.ts";

const good = {
  model: constantCorrection(specifiedThermometer(celsiusDifference(0.5), "stated")),
  resolution: 0,
};
const checked = {
  model: constantCorrection(correctedThermometer(celsiusDifference(-0.4), celsiusDifference(0.2))),
  resolution: 0.1,
};

describe("expandedAt", () => {
  it("is 0.95 A of a bare specification", () => {
    expect(expandedAt(good, 90)).toBeCloseTo(0.475, 12);
  });

  it("adds the display's step as squares, times 1.96 (JCGM 100:2008, 6.2)", () => {
    const both = Math.hypot(1.959964 * 0.2, (1.959964 * 0.1) / Math.sqrt(12));
    expect(Math.abs(expandedAt(checked, 90) - both)).toBeLessThan(1e-6);
    expect(standardAt(checked, 90)).toBeCloseTo(both / 1.959964, 6);
  });

  it("is wider at 90 degC than at 40 for a thermometer checked in ice alone", () => {
    const model = thermometerModel(iceChecked).model;
    const ice = { model, resolution: 0.1 };
    expect(expandedAt(ice, 90)).toBeGreaterThan(1.5 * expandedAt(ice, 40));
  });
});

describe("guardedLevel", () => {
  it.each(["over", "under"] as const)(
    "is where the uncertainty just reaches the level: %s",
    (side) => {
      const ice = { model: thermometerModel(iceChecked).model, resolution: 0.1 };
      const level = guardedLevel(ice, 90, side);
      const back =
        side === "over" ? level - expandedAt(ice, level) : level + expandedAt(ice, level);
      expect(Math.abs(back - 90)).toBeLessThan(1e-9);
      expect(level > 90).toBe(side === "over");
    },
  );
});

describe("chanceAtLeast", () => {
  it("is that of a rectangle for a specification", () => {
    // Corrected 90.2 with +-0.5: the truth lies in 89.7..90.7, 0.7 of it at or above 90.
    expect(chanceAtLeast(90, 90.2, good)).toBeCloseTo(0.7, 9);
    expect(chanceAtLeast(90, 90.5, good)).toBeCloseTo(1, 9);
    expect(chanceAtLeast(90, 89.5, good)).toBeCloseTo(0, 9);
  });

  it("is normal for a correction with its uncertainty", () => {
    const plain = { ...checked, resolution: 0 };
    // One standard uncertainty: 0.841345 (any table of the normal distribution).
    expect(Math.abs(chanceAtLeast(90, 90.2, plain) - 0.841345)).toBeLessThan(1e-6);
    expect(chanceAtLeast(90, 90, plain)).toBeCloseTo(0.5, 12);
  });

  it("is none for what was never held, and certain for what has no end", () => {
    expect(chanceAtLeast(90, -Infinity, good)).toBe(0);
    expect(chanceAtLeast(90, Infinity, good)).toBe(1);
  });
});

describe("heatingBudget", () => {
  it("lists thermometer and display, largest first", () => {
    expect(heatingBudget(checked, 90).map(({ source }) => source)).toEqual([
      "statement",
      "steps of the display",
    ]);
  });
});
