import { describe, expect, it } from "vitest";
import type { Appliance, Control } from "../../src/kitchen/kitchen.ts";
import { offeredSettings } from "../../src/kitchen/offered-settings.ts";
import { parseSetting, settingText } from "../../src/kitchen/setting.ts";
import { fahrenheitDifferenceToCelsius, fahrenheitToCelsius } from "../../src/quantity.ts";

// Constructed controls; the counts are arithmetic.
const steps = (low: number, high: number, step: number): Control => ({
  kind: "steps",
  low,
  high,
  step,
});
const inFahrenheit = steps(
  fahrenheitToCelsius(70),
  fahrenheitToCelsius(180),
  fahrenheitDifferenceToCelsius(1),
);

describe("offeredSettings", () => {
  it("gives every step from the lowest to the highest", () => {
    expect(offeredSettings(steps(30, 60, 1))).toHaveLength(31);
    const tenths = offeredSettings(steps(20, 60, 0.1));
    expect(tenths).toHaveLength(401);
    expect(tenths[181]).toEqual({ kind: "step", celsius: 38.1 });
    expect(tenths.at(-1)).toEqual({ kind: "step", celsius: 60 });
  });

  it("gives whole degrees Fahrenheit to a control that counts them", () => {
    const all = offeredSettings(inFahrenheit);
    expect(all).toHaveLength(111);
    expect(settingText(all[30]!, "degF")).toBe("100 degF");
  });

  it("offers the highest setting where a rounded step misses it by as little as typing may", () => {
    // 1 degF written as 0.5556 degC: 27 of them end at 45.0012.
    const control = steps(30, 45, 0.5556);
    expect(offeredSettings(control).at(-1)).toEqual({ kind: "step", celsius: 45 });
    expect(offeredSettings(control)).toHaveLength(28);
    expect(offeredSettings(steps(30, 45.5, 1)).at(-1)).toEqual({ kind: "step", celsius: 45 });
  });

  it("gives programs and marks in their order, and one position of a fixed control", () => {
    expect(offeredSettings({ kind: "marks", marks: ["1", "2"] })).toEqual([
      { kind: "mark", mark: "1" },
      { kind: "mark", mark: "2" },
    ]);
    expect(offeredSettings({ kind: "programs", programs: ["warm"] })).toEqual([
      { kind: "program", program: "warm" },
    ]);
    expect(offeredSettings({ kind: "fixed" })).toEqual([{ kind: "fixed" }]);
  });

  it.each([steps(30, 60, 1), steps(20, 60, 0.1), steps(25.5, 44.5, 0.5), inFahrenheit])(
    "offers only what the same control takes when typed, %j",
    (control) => {
      const appliance: Appliance = {
        id: "a",
        name: "A",
        kind: "other",
        control,
        thermostat: null,
        movedOn: null,
      };
      for (const setting of offeredSettings(control)) {
        const typed = setting.kind === "step" ? setting.celsius : null;
        expect(parseSetting(appliance, typed)).toEqual({ ok: true, value: setting });
      }
    },
  );
});
