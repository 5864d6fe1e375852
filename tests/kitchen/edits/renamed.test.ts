import { describe, expect, it } from "vitest";
import { renamed } from "../../../src/kitchen/edits/renamed.ts";
import { example, file, textOf } from "./example.ts";

describe("renamed", () => {
  it("is refused with the list of those who use the name", () => {
    const outcome = renamed(example, file, "appliances", "bath", "big bath");
    expect(outcome).toMatchObject({ ok: false, problem: { code: "kitchen-in-use" } });
    expect(textOf(outcome)).toBe(
      [
        'Expected nothing that needs the appliance "bath", found what is listed here. To rename it there too say --everywhere; nothing was changed:',
        "- Line 34, tests > two.",
        "- Line 40, batches > 1.",
      ].join("\n"),
    );
  });

  it("changes every use when asked to", () => {
    const after = textOf(
      renamed(example, file, "appliances", "bath", "big bath", { everywhere: true }),
    );
    expect(after).toBe(
      example
        .replace("  bath: {", "  big bath: {")
        .replace("appliance: bath\n", "appliance: big bath\n")
        .replace("appliance: bath,", "appliance: big bath,"),
    );
  });

  it("needs no leave for what nobody uses", () => {
    const after = textOf(renamed(example, file, "tests", "two", "2"));
    expect(after).toBe(example.replace("  two:", '  "2":'));
  });

  it("refuses a name that is taken, that is none, or that is not there", () => {
    expect(textOf(renamed(example, file, "tests", "one", "two"))).toBe(
      'Expected a new name for a water test, found "two" already in kitchen.yaml. Choose another name.',
    );
    expect(textOf(renamed(example, file, "tests", "one", "a\nb"))).toMatch(
      /^The change would leave .*\n- In tests > a b: expected a name of at most 60 letters/,
    );
    expect(textOf(renamed(example, file, "tests", "ones", "x"))).toBe(
      'Expected a water test of kitchen.yaml, found "ones". Did you mean "one"? There are: one, two.',
    );
    expect(textOf(renamed(example, file, "tests", "one", "__proto__"))).toMatch(/^Expected tests/);
  });

  it("refuses another name for a culture of the catalogue, which would then be unknown", () => {
    expect(textOf(renamed(example, file, "cultures", "warm-blend", "ours"))).toMatch(
      /expected low for a culture that is not in the catalogue/,
    );
  });

  it("to the same name changes nothing", () => {
    expect(renamed(example, file, "tests", "one", "one")).toEqual({ ok: true, value: example });
  });
});
