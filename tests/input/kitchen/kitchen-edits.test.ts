import { describe, expect, it } from "vitest";
import { editedKitchen } from "../../../src/input/kitchen/edit-kitchen-text.ts";
import type { EditName } from "../../../src/input/kitchen/kitchen-edits.ts";
import { equippedKitchen } from "../../cli/kitchen/run-kitchen.ts";
import { file, problemOf, tryEdit, typed, valueOf } from "../sample-kitchen.ts";

type Said = readonly (readonly [string, ...string[]])[];

// One constructed story of a kitchen. The check is the program itself: it must write the same bytes.
const story: readonly (readonly [name: EditName, words: readonly string[], said: Said])[] = [
  [
    "appliance",
    ["tub"],
    [
      ["kind", "water bath"],
      ["steps", "86F..113F"],
      ["step", "1F"],
    ],
  ],
  [
    "appliance",
    ["tub"],
    [
      ["moved", "2026-02-01"],
      ["thermostat", "yes"],
    ],
  ],
  [
    "container",
    ["crock"],
    [
      ["stands", "basin"],
      ["volume", "250 mL"],
      ["count", "2"],
    ],
  ],
  ["culture", ["yoghurt"], []],
  [
    "culture",
    ["reuteri"],
    [
      ["low", "36.5C"],
      ["hours", "30h"],
    ],
  ],
  [
    "thermometer",
    ["pen"],
    [
      ["ice", "0.3", "0.2"],
      ["date", "2026-01-10"],
      ["resolution", "0.1"],
    ],
  ],
  [
    "thermometer",
    ["pen"],
    [
      ["boiling", "203.5F"],
      ["altitude", "1450m"],
      ["date", "2026-01-10"],
    ],
  ],
  [
    "thermometer",
    ["pen"],
    [
      ["reference", "40.0"],
      ["reads", "40.4"],
      ["date", "2026-01-11"],
    ],
  ],
  [
    "batch",
    [],
    [
      ["culture", "reuteri"],
      ["appliance", "tub"],
      ["setting", "100F"],
      ["container", "crock"],
      ["date", "2026-03-01"],
      ["generation", "1"],
    ],
  ],
  [
    "batch",
    [],
    [
      ["culture", "reuteri"],
      ["date", "2026-03-04"],
      ["separated", "much"],
    ],
  ],
  [
    "batch",
    ["1"],
    [
      ["appliance", "warm-cooker"],
      ["notes", "from the jar"],
    ],
  ],
  ["batch", ["2"], [["remove"]]],
  ["rename", ["container", "crock", "pot"], [["everywhere"]]],
  ["remove", ["container", "jars"], []],
];

const lineOf = (name: EditName, words: readonly string[], said: Said): readonly string[] => [
  name,
  ...words,
  ...said.flatMap(([key, ...values]) => [`--${key}`, ...values]),
];

describe("kitchenEdits", () => {
  it("write what the command of that name writes, byte for byte", () => {
    const { ok, text } = equippedKitchen();
    let ours = text();
    for (const [name, words, said] of story) {
      ok(...lineOf(name, words, said));
      ours = valueOf(tryEdit(name, words, typed(...said), ours)).text;
      expect(ours, lineOf(name, words, said).join(" ")).toBe(text());
    }
    expect(
      valueOf(editedKitchen(ours, file, (found) => ({ ok: true, value: found.text }))),
    ).toBeDefined();
  });

  it("fail with the command's own sentences, and before any text is read", () => {
    expect(problemOf(tryEdit("appliance", ["a"], typed(["kind", "kettle"]), "")).code).toBe(
      "option-invalid",
    );
    expect(
      problemOf(tryEdit("container", ["a"], typed(["stands", "basin", "jars in air"]), "")).code,
    ).toBe("options-contradict");
  });
});
