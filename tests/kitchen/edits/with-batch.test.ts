import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changedBatch, withBatch, withoutBatch } from "../../../src/kitchen/edits/with-batch.ts";
import type { Kitchen } from "../../../src/kitchen/kitchen.ts";
import { parseKitchen } from "../../../src/kitchen/parse-kitchen.ts";
import { anyKitchen } from "../arbitrary-kitchen.ts";
import { anyTextOf, keepsLines, linesOf } from "../decorated.ts";
import { batchEntry } from "../written-kitchen.ts";
import { difference, example, file, textOf } from "./example.ts";

// Kitchens, comments and edits are random and constructed.

const runs = { numRuns: 40 };
const parsed = (text: string): Kitchen => {
  const outcome = parseKitchen(text, file);
  if (!outcome.ok) throw new Error(textOf(outcome));
  return outcome.value;
};
const logged = anyKitchen
  .filter(({ batches }) => batches.length > 0)
  .chain((kitchen) => fc.tuple(fc.constant(kitchen), anyTextOf(kitchen), fc.nat(5)));
const ready = anyKitchen.filter(
  ({ appliances, containers, cultures }) =>
    appliances.length > 0 && containers.length > 0 && cultures.length > 0,
);

describe("a batch in any text", () => {
  it("is added behind the others; every line stays", () => {
    fc.assert(
      fc.property(logged, ([kitchen, text, pick]) => {
        const like = kitchen.batches[pick % kitchen.batches.length]!;
        const after = textOf(withBatch(text, file, batchEntry(like)));
        expect(keepsLines(linesOf(text.trimEnd()), after)).toBe(true);
        expect(parsed(after)).toEqual({ ...kitchen, batches: [...kitchen.batches, like] });
      }),
      runs,
    );
  });

  it("is added as the first one", () => {
    const none = ready
      .map((kitchen): Kitchen => Object.assign({}, kitchen, { batches: [] }))
      .chain((kitchen) => fc.tuple(fc.constant(kitchen), anyTextOf(kitchen)));
    fc.assert(
      fc.property(none, ([kitchen, text]) => {
        const [{ id: appliance, control } = { id: "", control: null }] = kitchen.appliances;
        fc.pre(control?.kind === "fixed");
        const [culture, container] = [kitchen.cultures[0]!.id, kitchen.containers[0]!.id];
        const entry = { date: "2026-11-20", culture, appliance, container, starter: "5 %" };
        const after = textOf(withBatch(text, file, entry));
        expect(keepsLines(linesOf(text.trimEnd()), after)).toBe(true);
        expect(parsed(after).batches).toMatchObject([{ culture, appliance, starter: 0.05 }]);
      }),
      runs,
    );
  });

  it("takes the fields given and leaves the others and every other line", () => {
    fc.assert(
      fc.property(logged, ([kitchen, text, pick]) => {
        const at = pick % kitchen.batches.length;
        const entry = { separated: "much", trouble: ["pink", "fuzzy"], milk: null, heated: false };
        const after = textOf(changedBatch(text, file, at + 1, entry));
        const changed = Object.assign({}, kitchen.batches[at], {
          separated: "much",
          trouble: ["pink", "fuzzy"],
          milk: null,
          heated: false,
        });
        expect(parsed(after)).toEqual({ ...kitchen, batches: kitchen.batches.with(at, changed) });
        // A list put in the place of another takes the empty lines inside it away.
        const touched = /^\s*$|(?:separated|trouble|milk|heated|pink|orange|fuzzy|off-smelling)|#/;
        const others = linesOf(text.trimEnd()).filter((line) => !touched.test(line));
        expect(keepsLines(others, after)).toBe(true);
      }),
      runs,
    );
  });

  it("is the same text when nothing in it changes", () => {
    fc.assert(
      fc.property(logged, ([kitchen, text, pick]) => {
        const at = pick % kitchen.batches.length;
        const { date, culture, notes } = kitchen.batches[at]!;
        const same = changedBatch(text, file, at + 1, { date, culture, notes });
        expect(same).toEqual({ ok: true, value: text });
      }),
      runs,
    );
  });

  it("is taken out as one run of lines", () => {
    fc.assert(
      fc.property(logged, ([kitchen, text, pick]) => {
        const at = pick % kitchen.batches.length;
        const after = textOf(withoutBatch(text, file, at + 1));
        expect(parsed(after)).toEqual({ ...kitchen, batches: kitchen.batches.toSpliced(at, 1) });
        expect(keepsLines(linesOf(after.trimEnd()), text)).toBe(true);
      }),
      runs,
    );
  });
});

describe("a batch in a small kitchen", () => {
  const entry = {
    date: "2026-11-20",
    culture: "reuteri",
    appliance: "bath",
    setting: 38.5,
    container: "jars",
    heated: true,
    starter: "5 %",
    trouble: ["pink"],
    notes: "sour: very",
  };

  it("is written as one would write it", () => {
    expect(difference(example, textOf(withBatch(example, file, entry)))).toEqual([
      "+  - date: 2026-11-20",
      "+    culture: reuteri",
      "+    appliance: bath",
      "+    setting: 38.5",
      "+    container: jars",
      "+    heated: yes",
      "+    starter: 5 %",
      "+    trouble: [pink]",
      '+    notes: "sour: very"',
    ]);
  });

  it("is changed in its own line, and taken out of it", () => {
    const line =
      "  - { date: 2026-10-06, culture: reuteri, appliance: bath, setting: 38.5, container: jars";
    const changed = textOf(changedBatch(example, file, 1, { separated: "a little" }));
    expect(difference(example, changed)).toEqual([`-${line} }`, `+${line}, separated: a little }`]);
    expect(textOf(changedBatch(changed, file, 1, { separated: null }))).toBe(example);
    expect(difference(example, textOf(withoutBatch(example, file, 1)))).toEqual([`-${line} }`]);
  });

  it.each([0, 2, -1, 1.5])("is not found by number %s", (number) => {
    const known = `Expected a batch of kitchen.yaml, found "${number}". There are: 1.`;
    expect(textOf(changedBatch(example, file, number, { milk: "thin" }))).toBe(known);
    expect(textOf(withoutBatch(example, file, number))).toBe(known);
  });

  it("says so where there is none", () => {
    const none = textOf(withoutBatch(example, file, 1));
    expect(textOf(withoutBatch(none, file, 1))).toBe(
      'Expected a batch of kitchen.yaml, found "1". There is none yet.',
    );
  });

  it("refuses what would be a mistake, with the list", () => {
    const outcome = changedBatch(example, file, 1, { separated: "lots", setting: 52 });
    expect(textOf(outcome)).toContain(
      'batches > 1 > separated: expected one of: none, a little, much, found "lots"',
    );
    expect(outcome).toMatchObject({ ok: false, problem: { code: "kitchen-change-refused" } });
  });
});
