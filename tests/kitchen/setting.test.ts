import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Appliance, Control } from "../../src/kitchen/kitchen.ts";
import { parseSetting, settingText } from "../../src/kitchen/setting.ts";
import { problemText } from "../../src/problem.ts";
import type { TemperatureUnit } from "../../src/quantity.ts";
import { anySetting } from "./arbitrary-kitchen.ts";

// Constructed appliances.
const having = (control: Control): Appliance => ({
  id: "one",
  name: "Warm cooker",
  kind: "cooker",
  control,
  thermostat: null,
  movedOn: null,
});
const fixed = having({ kind: "fixed" });
const steps = having({ kind: "steps", low: 30, high: 45, step: 0.5 });
const fine = having({ kind: "steps", low: 20, high: 60, step: 0.1 });
// 86F..113F by 1F.
const fahrenheit = having({ kind: "steps", low: 30, high: 45, step: 1 / 1.8 });
const programs = having({ kind: "programs", programs: ["Warm", "Yoghurt"] });
const marks = having({ kind: "marks", marks: ["low", "1", "2", "high"] });

const celsiusOf = (appliance: Appliance, written: string | number): number | null => {
  const found = parseSetting(appliance, written);
  return found.ok && found.value.kind === "step" ? found.value.celsius : null;
};

const refusal = (
  appliance: Appliance,
  written: string | number | null,
  unit?: TemperatureUnit,
): string => {
  const found = parseSetting(appliance, written, unit);
  return found.ok ? "" : problemText(found.problem);
};

describe("parseSetting", () => {
  it("asks nothing of a fixed control", () => {
    for (const written of [null, "", " ", "fixed"]) {
      expect(parseSetting(fixed, written)).toEqual({ ok: true, value: { kind: "fixed" } });
    }
    expect(refusal(fixed, 38)).toBe(
      'Found "38" as a setting. Expected for Warm cooker: no setting, its control is fixed.',
    );
  });

  it.each([
    [steps, 38, 38],
    [steps, "38.5", 38.5],
    [steps, "38,5 °C", 38.5],
    [steps, 30, 30],
    [steps, 45, 45],
    // 101.3 degF is 38.5 degC exactly.
    [steps, "101.3F", 38.5],
    // Sums of tenths miss their decimals; the grid's own value is given.
    [fine, 38.3, 38.3],
    [fine, "59.9", 59.9],
    // 100 degF is 37.78 degC, as a display or a person rounds it.
    [fahrenheit, "100F", 37.777777778],
    [fahrenheit, 37.78, 37.777777778],
  ])("takes a step: %j, %s", (appliance, written, celsius) => {
    expect(celsiusOf(appliance, written)).toBe(celsius);
  });

  it.each([
    [steps, 38.3, "nearest 38 or 38.5"],
    [steps, 29, "nearest 30."],
    [steps, 60, "nearest 45."],
    [steps, "warm", "a step of 0.5 from 30 to 45 degC."],
    [steps, null, "a step of 0.5 from 30 to 45 degC."],
    [fine, "38.25", "nearest 38.2 or 38.3"],
  ])("refuses what is no step and offers the nearest: %j, %s", (appliance, written, said) => {
    expect(refusal(appliance, written)).toContain(said);
  });

  it("speaks the kitchen's unit, and offers the letter that was left out", () => {
    expect(refusal(fahrenheit, "100", "degF")).toBe(
      'Found "100" as a setting. Did you mean "100F"? Expected for Warm cooker: a step of 1 from 86 to 113 degF.',
    );
    expect(refusal(fahrenheit, "38", "degF")).toContain(
      "a step of 1 from 86 to 113 degF, nearest 100 or 101.",
    );
  });

  it("takes programs and marks by name, capitals aside, and numbers as marks", () => {
    expect(parseSetting(programs, "yoghurt")).toMatchObject({ value: { program: "Yoghurt" } });
    expect(parseSetting(marks, 2)).toMatchObject({ value: { kind: "mark", mark: "2" } });
    expect(refusal(programs, "Yogurt")).toBe(
      'Found "Yogurt" as a setting. Did you mean "Yoghurt"? Expected for Warm cooker: one of its programs (Warm, Yoghurt).',
    );
    expect(refusal(marks, null)).toBe(
      "Found none as a setting. Expected for Warm cooker: one of its marks (low, 1, 2, high).",
    );
  });
});

describe("settingText", () => {
  it("is in the unit asked for", () => {
    expect(settingText({ kind: "step", celsius: 38 })).toBe("38 degC");
    expect(settingText({ kind: "step", celsius: 38 }, "degF")).toBe("100.4 degF");
    expect(settingText({ kind: "mark", mark: "8" }, "degF")).toBe("8");
    expect(settingText({ kind: "fixed" })).toBe("fixed");
  });

  it("reads back as the same setting, in both units", () => {
    const any = fc
      .constantFrom(fixed, steps, fine, fahrenheit, programs, marks)
      .chain((appliance) =>
        fc.tuple(
          fc.constant(appliance),
          anySetting(appliance.control),
          fc.constantFrom("degC" as const, "degF" as const),
        ),
      );
    fc.assert(
      fc.property(any, ([appliance, setting, unit]) => {
        expect(parseSetting(appliance, settingText(setting, unit))).toEqual({
          ok: true,
          value: setting,
        });
      }),
    );
  });
});
