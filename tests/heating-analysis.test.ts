import { describe, expect, it } from "vitest";
import { heatingTargets } from "../src/culture/heating-targets.ts";
import { analyseHeating, type HeatingRequest } from "../src/heating-analysis.ts";
import { celsiusDifference } from "../src/quantity.ts";
import { correctedThermometer } from "../src/thermometer/budget.ts";
import { constantCorrection } from "../src/thermometer/constant-correction.ts";

const sourceOf = (text: string) => ({
  name: "pot.csv",
  chunks: (async function* chunks() {
    yield new TextEncoder().encode(text);
  })(),
  sha256: () => "0".repeat(64),
});

const request: HeatingRequest = {
  version: "0.0.0",
  target: heatingTargets[0]!,
  levels: [{ to: 43, of: "asked" }],
  culture: null,
  thermometer: {
    id: null,
    model: constantCorrection(correctedThermometer(celsiusDifference(0.5), celsiusDifference(0.1))),
  },
  notices: [],
  probe: null,
  surroundings: null,
  confidence: 0.95,
  shownUnit: "degC",
  reading: {},
};

/** Constructed: up to 90.2 degC on the display in 20 min, 15 min there, then quickly down to 30. */
const rows = Array.from({ length: 61 }, (_, minute) => {
  const milk = minute < 20 ? 20 + (70.2 * minute) / 20 : 90.2 - 2.5 * Math.max(0, minute - 35);
  return { minute, milk: milk.toFixed(1) };
});
const one = `Minutes,Milk (degC)\n${rows.map(({ minute, milk }) => `${minute},${milk}`).join("\n")}\n`;
const two = `Minutes,Milk (degC),Stove (degC)\n${rows.map(({ minute, milk }) => `${minute},${milk},${milk}`).join("\n")}\n`;
const withRoom = two.replace("Stove", "Room");

describe("analyseHeating", () => {
  it("corrects the readings before it judges them", async () => {
    const found = await analyseHeating(request, sourceOf(one));
    if (!found.ok) throw new Error(found.problem.code);
    const { step, coolDowns, probe, thermometer } = found.value;
    expect(probe).toBe("Milk");
    expect(step.peak).toBeCloseTo(90.7, 9);
    expect(step.verdict).toBe("holds");
    expect(thermometer.correction).toBe(0.5);
    // What the display has to show: half a degree less than the guarded target.
    expect(step.surelyAtReading).toBeCloseTo(89.5 + step.expandedUncertainty, 6);
    expect(coolDowns).toMatchObject([{ to: 43, of: "asked", unknown: null }]);
    expect(coolDowns[0]?.safeAtMinute).toBeGreaterThan(54);
  });

  it("misses the same without the correction", async () => {
    const model = constantCorrection(
      correctedThermometer(celsiusDifference(-0.5), celsiusDifference(0.1)),
    );
    const found = await analyseHeating(
      { ...request, thermometer: { id: "pen", model } },
      sourceOf(one),
    );
    expect(found).toMatchObject({
      ok: true,
      value: { step: { verdict: "misses" }, thermometerId: "pen" },
    });
  });

  it("asks which of several probes stood in the milk, and takes the one said", async () => {
    const unsaid = await analyseHeating(request, sourceOf(two));
    expect(unsaid).toMatchObject({ ok: false, problem: { code: "option-missing" } });
    const said = await analyseHeating({ ...request, probe: "stove" }, sourceOf(two));
    expect(said).toMatchObject({ ok: true, value: { probe: "Stove" } });
    const stray = await analyseHeating({ ...request, probe: "Pan" }, sourceOf(two));
    expect(stray).toMatchObject({ ok: false, problem: { code: "probe-unknown" } });
  });

  it("does not take the room's probe for the milk's", async () => {
    const found = await analyseHeating(request, sourceOf(withRoom));
    expect(found).toMatchObject({ ok: true, value: { probe: "Milk" } });
  });

  it("hands on why a file cannot be read", async () => {
    const found = await analyseHeating(request, sourceOf("nothing,here\n"));
    expect(found.ok).toBe(false);
  });
});
