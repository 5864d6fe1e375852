import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CheckEntry } from "../../../src/kitchen/edits/entries.ts";
import { removed } from "../../../src/kitchen/edits/removed.ts";
import { renamed } from "../../../src/kitchen/edits/renamed.ts";
import { withAppliance } from "../../../src/kitchen/edits/with-appliance.ts";
import { withCheck } from "../../../src/kitchen/edits/with-check.ts";
import { withContainer } from "../../../src/kitchen/edits/with-container.ts";
import { withCulture } from "../../../src/kitchen/edits/with-culture.ts";
import { withTest } from "../../../src/kitchen/edits/with-test.ts";
import { withThermometer } from "../../../src/kitchen/edits/with-thermometer.ts";
import type { Kitchen } from "../../../src/kitchen/kitchen.ts";
import { parseKitchen } from "../../../src/kitchen/parse-kitchen.ts";
import { problemText } from "../../../src/problem.ts";
import type { Outcome } from "../../../src/problem.ts";
import { anyKitchen, anyTestedKitchen } from "../arbitrary-kitchen.ts";
import { anyTextOf, keepsLines, linesOf } from "../decorated.ts";
import { testEntry } from "../written-kitchen.ts";

// Kitchens, comments and edits are random and constructed.

const file = "kitchen.yaml";
const runs = { numRuns: 40 };
const fresh = "a new one";

const valueOf = <Value>(outcome: Outcome<Value>): Value => {
  if (!outcome.ok) throw new Error(problemText(outcome.problem));
  return outcome.value;
};
const parsed = (text: string): Kitchen => valueOf(parseKitchen(text, file));

const withText = (kitchens: fc.Arbitrary<Kitchen>) =>
  kitchens.chain((kitchen) => fc.tuple(fc.constant(kitchen), anyTextOf(kitchen)));

/** Bare line feeds in a file of CRLF lines, and the other way round. */
const strayLineEnds = (before: string, after: string): number =>
  before.includes("\r\n")
    ? (after.match(/[^\r]\n/g)?.length ?? 0)
    : (after.match(/\r/g)?.length ?? 0);

const sameForm = (before: string, after: string): void => {
  expect(strayLineEnds(before, after)).toBe(0);
  expect(after.startsWith("\uFEFF")).toBe(before.startsWith("\uFEFF"));
};

describe("an entry added to any text", () => {
  type Added = readonly [string, (text: string) => Outcome<string>, (kitchen: Kitchen) => unknown];
  const check: CheckEntry = { ice: [0.3, "32.4F"], date: "2026-10-03", confirmed: true };
  const added: readonly Added[] = [
    [
      "thermometer",
      (text) => withThermometer(text, file, fresh, { name: "Pen: red", resolution: 0.1 }),
      (kitchen) => ({
        ...kitchen,
        thermometers: [
          ...kitchen.thermometers,
          { id: fresh, name: "Pen: red", resolution: 0.1, accuracy: null, checks: [] },
        ],
      }),
    ],
    [
      "appliance",
      (text) => withAppliance(text, file, fresh, { marks: [1, "two"], thermostat: "unknown" }),
      (kitchen) => ({
        ...kitchen,
        appliances: [
          ...kitchen.appliances,
          {
            id: fresh,
            name: fresh,
            kind: "other",
            control: { kind: "marks", marks: ["1", "two"] },
            thermostat: null,
            movedOn: null,
          },
        ],
      }),
    ],
    [
      "container",
      (text) => withContainer(text, file, fresh, { stands: "basin", volume: "500 ml" }),
      (kitchen) => ({
        ...kitchen,
        containers: [
          ...kitchen.containers,
          { id: fresh, name: fresh, stands: "basin", volume: 0.5, count: null, changedOn: null },
        ],
      }),
    ],
    [
      "culture",
      (text) =>
        withCulture(text, file, fresh, { low: 30, high: "91.4F", ceiling: 40, hours: "90 min" }),
      (kitchen) => ({
        ...kitchen,
        cultures: [
          ...kitchen.cultures,
          {
            id: fresh,
            name: fresh,
            low: 30,
            high: 33,
            target: 31.5,
            ceiling: 40,
            hours: 1.5,
            sources: {
              window: { kind: "own" },
              target: { kind: "own" },
              ceiling: { kind: "own" },
              hours: { kind: "own" },
            },
            growth: [],
          },
        ],
      }),
    ],
  ];

  it.each(added)(
    "%s: every line stays, and the data are those of before and the entry",
    (...args) => {
      const [, edit, expected] = args;
      fc.assert(
        fc.property(withText(anyKitchen), ([kitchen, text]) => {
          const after = valueOf(edit(text));
          expect(keepsLines(linesOf(text.trimEnd()), after)).toBe(true);
          expect(parsed(after)).toEqual(expected(kitchen));
          sameForm(text, after);
        }),
      );
    },
  );

  it("check: of a thermometer that is there, and of a new one", () => {
    fc.assert(
      fc.property(withText(anyKitchen), fc.nat(5), ([kitchen, text], pick) => {
        const id = kitchen.thermometers[pick]?.id ?? fresh;
        const after = valueOf(withCheck(text, file, id, check));
        expect(keepsLines(linesOf(text.trimEnd()), after)).toBe(true);
        const one = parsed(after).thermometers.find((entry) => entry.id === id);
        const was = kitchen.thermometers[pick]?.checks ?? [];
        expect(one?.checks.slice(0, -1)).toEqual(was);
        expect(one?.checks.at(-1)).toMatchObject({ kind: "ice", confirmed: true });
        expect(one?.checks.at(-1)?.readings[1]).toBeCloseTo(0.4 / 1.8, 9);
        sameForm(text, after);
      }),
      runs,
    );
  });

  it("water test: a second one like the first", () => {
    fc.assert(
      fc.property(withText(anyTestedKitchen), ([kitchen, text]) => {
        const like = kitchen.tests[0]!;
        const after = valueOf(withTest(text, file, fresh, testEntry(like)));
        expect(keepsLines(linesOf(text.trimEnd()), after)).toBe(true);
        expect(parsed(after).tests.at(-1)).toMatchObject({ id: fresh, setting: like.setting });
        expect(parsed(after).tests.slice(0, -1)).toEqual(kitchen.tests);
      }),
      runs,
    );
  });
});

describe("an entry changed in any text", () => {
  it("takes the fields given and leaves every other line", () => {
    const some = anyKitchen.filter(({ containers }) => containers.length > 0);
    fc.assert(
      fc.property(withText(some), fc.nat(5), ([kitchen, text], pick) => {
        const at = pick % kitchen.containers.length;
        const one = kitchen.containers[at]!;
        const entry = { volume: 1.25, count: 3, name: null };
        const after = valueOf(withContainer(text, file, one.id, entry, { replace: true }));
        const changed = { ...one, volume: 1.25, count: 3, name: one.id };
        expect(parsed(after)).toEqual({
          ...kitchen,
          containers: kitchen.containers.with(at, changed),
        });
        const touched = /^\s*(?:name|volume|count):/;
        const others = linesOf(text.trimEnd()).filter(
          (line) => !touched.test(line) && !line.includes("#"),
        );
        expect(keepsLines(others, after)).toBe(true);
        sameForm(text, after);
      }),
      runs,
    );
  });

  it("is the same text when nothing in it changes", () => {
    fc.assert(
      fc.property(withText(anyTestedKitchen), ([kitchen, text]) => {
        const one = kitchen.tests[0]!;
        expect(withTest(text, file, one.id, testEntry(one))).toEqual({ ok: true, value: text });
        const replaced = withTest(text, file, one.id, { fill: one.fill }, { replace: true });
        expect(replaced).toEqual({ ok: true, value: text });
      }),
      runs,
    );
  });
});

describe("renaming and removing in any text", () => {
  it("changes only lines with the old name in them, and every reference", () => {
    fc.assert(
      fc.property(withText(anyTestedKitchen), ([kitchen, text]) => {
        const { appliance: from } = kitchen.tests[0]!;
        const options = { everywhere: true };
        const after = valueOf(renamed(text, file, "appliances", from, fresh, options));
        const was = text.split("\n");
        const is = after.split("\n");
        expect(is.length).toBe(was.length);
        const changed = was.filter((line, index) => line !== is[index]);
        expect(changed.every((line) => /appliance:|:/.test(line))).toBe(true);
        const to = <Entry extends { readonly appliance: string }>(entry: Entry): Entry =>
          entry.appliance === from ? { ...entry, appliance: fresh } : entry;
        const named = parsed(after);
        expect(named.tests).toEqual(kitchen.tests.map(to));
        expect(named.batches).toEqual(kitchen.batches.map(to));
        const back = valueOf(renamed(after, file, "appliances", fresh, from, options));
        expect(parsed(back)).toEqual(kitchen);
      }),
      runs,
    );
  });

  it("takes out one run of lines", () => {
    fc.assert(
      fc.property(withText(anyTestedKitchen), fc.nat(5), ([kitchen, text], pick) => {
        const at = pick % kitchen.tests.length;
        const after = valueOf(removed(text, file, "tests", kitchen.tests[at]!.id));
        expect(parsed(after)).toEqual({ ...kitchen, tests: kitchen.tests.toSpliced(at, 1) });
        expect(keepsLines(linesOf(after.trimEnd()), text)).toBe(true);
        sameForm(text, after);
      }),
      runs,
    );
  });

  it("takes out a culture", () => {
    const some = anyKitchen.filter((one) => one.cultures.length > 0 && one.batches.length === 0);
    fc.assert(
      fc.property(withText(some), fc.nat(5), ([kitchen, text], pick) => {
        const at = pick % kitchen.cultures.length;
        const after = valueOf(removed(text, file, "cultures", kitchen.cultures[at]!.id));
        expect(parsed(after).cultures).toEqual(kitchen.cultures.toSpliced(at, 1));
        expect(keepsLines(linesOf(after.trimEnd()), text)).toBe(true);
      }),
      runs,
    );
  });
});
