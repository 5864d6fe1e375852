import { describe, expect, it } from "vitest";
import {
  problemOf,
  sampleKitchen,
  sampleText,
  tryEdit,
  typed,
  valueOf,
} from "../sample-kitchen.ts";

describe("applianceEdit", () => {
  it("adds one that is all said, and changes only what was said of a known one", () => {
    const { after } = valueOf(
      tryEdit("appliance", ["tub"], typed(["kind", "water bath"], ["control", "fixed"])),
    );
    expect(after.appliances.at(-1)).toMatchObject({ id: "tub", control: { kind: "fixed" } });
    const changed = valueOf(tryEdit("appliance", ["box"], typed(["moved", "2026-11-20"])));
    const [, , box] = sampleKitchen.appliances;
    expect(changed.after.appliances[2]).toEqual({ ...box, movedOn: "2026-11-20" });
    expect(changed.text).toContain("# What stands in this invented kitchen.");
  });

  it.each([
    [["tub"], typed(["control", "fixed"]), "option-missing", "--kind"],
    [["tub"], typed(["kind", "cooker"]), "option-missing", "--control"],
    [[], typed(["kind", "cooker"]), "option-missing", "the appliance's name"],
    [["box"], typed(["moved", "2026-11-21"]), "option-invalid", "--moved"],
  ])("refuses %j with %j", (words, options, code, option) => {
    const problem = problemOf(tryEdit("appliance", words, options, sampleText));
    expect(problem.code).toBe(code);
    expect(JSON.stringify(problem.facts)).toContain(option);
  });
});
