import { describe, expect, it } from "vitest";
import { withAppliance } from "../../../src/kitchen/edits/with-appliance.ts";
import { withThermometer } from "../../../src/kitchen/edits/with-thermometer.ts";
import { example, file, textOf } from "./example.ts";

const replace = { replace: true };

describe("withAppliance", () => {
  it("refuses a control that lacks a setting of a test, with the list", () => {
    expect(textOf(withAppliance(example, file, "bath", { steps: "40..60 by 1" }, replace))).toBe(
      [
        "The change would leave kitchen.yaml with mistakes, so it was not made:",
        '- Line 35, tests > two > setting: expected for bath: a step of 1 from 40 to 60 degC, nearest 40, found "38.5".',
        '- Line 40, batches > 1 > setting: expected for bath: a step of 1 from 40 to 60 degC, nearest 40, found "38.5".',
      ].join("\n"),
    );
  });

  it("puts another control in the place of the one there", () => {
    const steps = textOf(withAppliance(example, file, "box", { steps: "1..3 by 1" }, replace));
    expect(steps).toContain("    steps: 1..3 by 1\n");
    expect(steps).not.toContain("marks:");
  });

  it("refuses an id that is there, unless the entry says the same", () => {
    expect(withAppliance(example, file, "box", { marks: [1, 2, 3] })).toEqual({
      ok: true,
      value: example,
    });
    expect(withAppliance(example, file, "box", { marks: [1, 2] })).toMatchObject({
      ok: false,
      problem: { code: "id-taken", facts: { id: "box" } },
    });
  });

  it("refuses an entry that is not valid, and says where without a line", () => {
    expect(textOf(withAppliance(example, file, "new", { kind: "oven" }))).toBe(
      [
        "The change would leave kitchen.yaml with mistakes, so it was not made:",
        '- In appliances > new > kind: expected one of: cooker, water bath, circulating bath, warming box, other, found "oven"; write for example kind: cooker.',
      ].join("\n"),
    );
  });

  it("leaves a file with mistakes to its person", () => {
    expect(withAppliance("holdband: 1\nunit: K\n", file, "new", {})).toMatchObject({
      ok: false,
      problem: { code: "kitchen-invalid" },
    });
  });
});

describe("names that JavaScript or YAML take for something else", () => {
  it.each(["constructor", "yes", "null", "- a", "a: b", "#", "<<", "38", "🍯", "? x", "{", "'"])(
    "%s",
    (id) => {
      const after = withThermometer(example, file, id, { name: id });
      expect(after.ok).toBe(true);
      const again = after.ok ? withThermometer(after.value, file, id, { name: id }) : after;
      expect(again).toEqual(after);
    },
  );

  it("is refused for __proto__", () => {
    const entry = JSON.parse('{"name": "x"}') as { name: string };
    expect(withThermometer(example, file, "__proto__", entry).ok).toBe(false);
  });
});
