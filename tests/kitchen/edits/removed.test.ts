import { describe, expect, it } from "vitest";
import { removed } from "../../../src/kitchen/edits/removed.ts";
import { parseKitchen } from "../../../src/kitchen/parse-kitchen.ts";
import { example, file, textOf } from "./example.ts";

describe("removed", () => {
  it.each([
    ["thermometers", "pen", ["- Line 32, tests > one."]],
    [
      "containers",
      "jars",
      ["- Line 28, tests > one.", "- Line 36, tests > two.", "- Line 40, batches > 1."],
    ],
    ["cultures", "reuteri", ["- Line 40, batches > 1."]],
  ] as const)("of %s: refused with the list of those who use it", (section, id, uses) => {
    const outcome = removed(example, file, section, id);
    expect(outcome).toMatchObject({ ok: false, problem: { code: "kitchen-in-use" } });
    expect(textOf(outcome).split("\n").slice(1)).toEqual(uses);
  });

  it("leaves nothing but what belongs to others", () => {
    const one = textOf(removed(example, file, "tests", "one"));
    const two = textOf(removed(one, file, "tests", "two"));
    expect(parseKitchen(two, file)).toMatchObject({ ok: true, value: { tests: [] } });
    expect(two).toMatch(/^tests:\n\nbatches:$/m);
    const three = textOf(removed(two, file, "thermometers", "pen"));
    expect(three).toMatch(/^thermometers:\n\nappliances:$/m);
  });

  it("knows what is not there", () => {
    expect(textOf(removed(example, file, "appliances", "bx"))).toBe(
      'Expected an appliance of kitchen.yaml, found "bx". Did you mean "box"? There are: box, bath.',
    );
  });
});
