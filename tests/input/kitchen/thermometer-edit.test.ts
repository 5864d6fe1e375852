import { describe, expect, it } from "vitest";
import { thermometerClash, thermometerEdit } from "../../../src/input/kitchen/thermometer-edit.ts";
import { saysOfThermometer } from "../../../src/input/kitchen/thermometer-edit.ts";
import { thermometerShape } from "../../../src/input/kitchen/thermometer-options.ts";
import { problemOf, sayCode, today, tryEdit, typed, valueOf } from "../sample-kitchen.ts";

const ice = (reading: string, ...more: readonly (readonly [string, ...string[]])[]) =>
  tryEdit("thermometer", ["pen"], typed(["ice", reading], ...more));

describe("thermometerEdit", () => {
  it("keeps checks at ice, at boiling and beside a reference in one go", () => {
    const said = typed(
      ["ice", "0.3"],
      ["boiling", "99.9"],
      ["altitude", "10m"],
      ["reference", "40"],
      ["reads", "40.2"],
      ["referenceUncertainty", "0.05"],
    );
    const { after } = valueOf(tryEdit("thermometer", ["pen"], said));
    const checks = after.thermometers[0]!.checks;
    expect(checks.map(({ kind, date }) => [kind, date])).toEqual([
      ["ice", today],
      ["boiling", today],
      ["reference", today],
    ]);
  });

  it("keeps the same check once", () => {
    const once = valueOf(ice("0.3")).text;
    const again = tryEdit("thermometer", ["pen"], typed(["ice", "0.3"]), once);
    expect(valueOf(again).text).toBe(once);
  });

  it("questions what looks wrong in the caller's words, until it is confirmed", () => {
    expect(problemOf(ice("6"))).toEqual({
      code: "check-doubtful",
      facts: { questions: "ice-too-warm" },
    });
    const { after } = valueOf(ice("6", ["confirm"]));
    expect(after.thermometers[0]?.checks[0]).toMatchObject({ confirmed: true });
  });

  it("stores nothing for a window that cannot be judged, or boiling water without a place", () => {
    expect(problemOf(ice("0.3", ["culture", "reuterii"])).code).toBe("culture-unknown");
    expect(problemOf(tryEdit("thermometer", ["pen"], typed(["boiling", "99"])))).toMatchObject({
      code: "option-missing",
      facts: { option: "--altitude or --pressure" },
    });
  });

  it("refuses what cannot be before a kitchen is read", () => {
    const late = thermometerShape.parse({ ice: ["0.3"], date: ["2026-11-21"] });
    expect(problemOf(thermometerClash(late, today)).code).toBe("option-invalid");
    expect(problemOf(thermometerEdit(["pen"], late, today, sayCode)).code).toBe("option-invalid");
    const plain = thermometerShape.parse({ ice: ["0.3"] });
    expect(thermometerClash(plain, today)).toBeNull();
    expect(problemOf(thermometerEdit([], plain, today, sayCode)).code).toBe("option-missing");
  });
});

describe("saysOfThermometer", () => {
  it("tells a check or a figure from a question", () => {
    expect(saysOfThermometer(thermometerShape.parse({ ice: ["0.3"] }))).toBe(true);
    expect(saysOfThermometer(thermometerShape.parse({ accuracy: ["0.5"] }))).toBe(true);
    expect(saysOfThermometer(thermometerShape.parse({ culture: ["reuteri"] }))).toBe(false);
  });
});
