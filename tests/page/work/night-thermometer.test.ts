import { describe, expect, it } from "vitest";
import { assumedRequest } from "../../probe-files.ts";
import {
  nightOptions,
  nightThermometer,
  withThermometer,
} from "../../../src/page/work/night-thermometer.ts";
import { correctionAt } from "../../../src/thermometer/correction-at.ts";

const today = "2026-11-25";
const empty = "shown unit: degC\n";
const none = { checks: {}, kept: null };

const made = (checks: Record<string, string[] | boolean>, text = "holdband: 1\n") =>
  nightThermometer(text, { checks, kept: null }, today);

describe("nightOptions", () => {
  it("parts what is of the thermometer from what is of the night", () => {
    const values = { culture: ["yoghurt"], ice: ["0.3"], kitchenThermometer: ["pen"] };
    expect(nightOptions(values)).toEqual({
      check: { culture: ["yoghurt"] },
      checks: { ice: ["0.3"] },
      kept: "pen",
    });
  });
});

describe("nightThermometer", () => {
  it("is nothing where nothing was measured", () => {
    expect(nightThermometer(empty, none, today)).toEqual({ ok: true, value: null });
    expect(nightThermometer(empty, { checks: { confirm: true }, kept: null }, today)).toEqual({
      ok: true,
      value: null,
    });
  });

  it("corrects by what ice showed", () => {
    const found = made({ ice: ["0.3", "0.3"] });
    if (!found.ok || found.value === null) throw new Error("no thermometer");
    // Melting ice is 0 degC, so 0.3 is 0.3 too much.
    expect(correctionAt(found.value.model, 0).correction).toBeCloseTo(-0.3, 6);
  });

  it("questions a doubtful check, and takes it when confirmed", () => {
    expect(made({ ice: ["6.5"] })).toMatchObject({ problem: { code: "check-doubtful" } });
    expect(made({ ice: ["6.5"], confirm: true })).toMatchObject({ ok: true });
  });

  it("needs to know where the water boiled", () => {
    expect(made({ boiling: ["95.2"] })).toMatchObject({ problem: { code: "option-missing" } });
    expect(made({ boiling: ["95.2"], altitude: ["1450m"] })).toMatchObject({ ok: true });
  });

  it("refuses one that the kitchen does not have", () => {
    const asked = nightThermometer("holdband: 1\n", { checks: {}, kept: "pen" }, today);
    expect(asked).toMatchObject({ problem: { code: "not-in-kitchen" } });
  });
});

describe("withThermometer", () => {
  const { request } = assumedRequest([12]);

  it("leaves a request alone where there is none", () => {
    expect(withThermometer(request, null)).toBe(request);
  });

  it("puts it behind every probe, and says what it is near the window", () => {
    const found = made({ ice: ["0.3", "0.3"] });
    if (!found.ok || found.value === null) throw new Error("no thermometer");
    const full = withThermometer(request, found.value);
    expect(full.checkedThermometer).toBe(found.value);
    expect(full.thermometer).toMatchObject({ from: found.value.model.from });
  });
});
