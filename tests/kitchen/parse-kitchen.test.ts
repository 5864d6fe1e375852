import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Kitchen } from "../../src/kitchen/kitchen.ts";
import { parseKitchen } from "../../src/kitchen/parse-kitchen.ts";
import { problemText } from "../../src/problem.ts";
import { mistakesTable } from "./mistakes-table.ts";

const file = "kitchen.yaml";

const sentencesAbout = (text: string): readonly string[] => {
  const parsed = parseKitchen(text, file);
  if (parsed.ok) return [];
  expect(parsed.problem.code).toBe("kitchen-invalid");
  return problemText(parsed.problem).split("\n").slice(1);
};

const kitchenOf = (text: string): Kitchen => {
  const parsed = parseKitchen(text, file);
  if (!parsed.ok) throw new Error(problemText(parsed.problem));
  return parsed.value;
};

describe("a mistake", () => {
  it.each(mistakesTable)("%s", (_, text, sentences) => {
    expect(sentencesAbout(text)).toEqual(sentences);
  });

  it.each(mistakesTable)("%s, in a file with a mark and CRLF: the same", (_, text, sentences) => {
    const windows = `\uFEFF${text.replace("\uFEFF", "").replaceAll("\n", "\r\n")}`;
    expect(sentencesAbout(windows)).toEqual(sentences);
  });

  it("among many: twenty are shown, the rest counted", () => {
    const keys = Array.from({ length: 25 }, (_, index) => `key${index}: 1\n`);
    const found = sentencesAbout(`holdband: 1\n${keys.join("")}`);
    expect(found).toHaveLength(21);
    expect(found[0]).toMatch(/^- Line 2, key0: expected one of the keys/);
    expect(found.at(-1)).toBe("- and 5 more.");
  });

  it("is said in one line each, whatever stands in the file", () => {
    const text = 'holdband: 1\nunit: "K\\n- Line 1: \\u202E\\u0007all is well"\n';
    expect(sentencesAbout(text)).toEqual([
      '- Line 2, unit: expected C or F, found "K - Line 1: all is well"; write for example unit: C.',
    ]);
  });
});

// Constructed; the example of the form itself.
describe("a kitchen", () => {
  const text = `
holdband: 1
unit: F
altitude: 4760 ft
room: 63F..75F
thermometers:
  stick:
    resolution: 0.2F
    accuracy: +-1
    checks:
      - ice: 32.5F
      - boiling: [95.2, "95,3"]
        pressure: 1013 hPa sea-level
      - boiling: 97
        altitude: 900
        pressure: 26.8 inHg station
        confirmed: yes
appliances:
  box:
    kind: Warming  box
    marks: [1, 1.0, 8, high]
    thermostat: true
  cooker:
    programs: [Warm, "8"]
  plate:
  bath:
    steps: 86F..113F by 1F
containers:
  jars: { stands: jars in water, volume: 500 ml }
cultures:
  - reuteri
  - id: warm-blend
    high: 42
  - { id: own, low: 86F, high: 33, ceiling: 40, hours: 20h, name: Own one }
tests:
  t1:
    appliance: box
    setting: 8
    container: jars
    notes:
    files:
      - file: readings/a b.csv
        sha256: ${"AB".repeat(32)}
        starts: 2026-10-03T22:10
        columns: Jar
        probes:
          Jar: food
          Bath: { place: bath, thermometer: stick }
  t2:
    appliance: bath
    setting: 100F
    container: jars
    files:
      file: readings/b.csv
      sha256: ${"0".repeat(64)}
batches:
  - { date: 2026-10-06, culture: own, appliance: plate, container: jars }
`;
  const kitchen = kitchenOf(text);

  it("takes numbers, units and words in the ways people write them", () => {
    expect(kitchen.shownUnit).toBe("degF");
    // 4760 ft x 0.3048 m (NIST SP 811, appendix B.8).
    expect(kitchen.altitude).toBeCloseTo(1450.848, 9);
    expect(kitchen.room?.low).toBeCloseTo((63 - 32) / 1.8, 9);
    const [stick] = kitchen.thermometers;
    expect(stick).toMatchObject({ id: "stick", name: "stick", accuracy: 1 });
    expect(stick?.resolution).toBeCloseTo(0.2 / 1.8, 9);
    expect(stick?.checks[0]?.readings[0]).toBeCloseTo(0.5 / 1.8, 9);
    expect(stick?.checks[1]).toMatchObject({
      readings: [95.2, 95.3],
      place: {
        altitude: kitchen.altitude,
        pressure: { hectopascal: 1013, reduced: "sea-level" },
      },
    });
    expect(stick?.checks[2]).toMatchObject({
      confirmed: true,
      place: { altitude: 900, pressure: { reduced: "station" } },
    });
  });

  it("knows controls by what is written, and marks by their letters", () => {
    expect(kitchen.appliances.map(({ control }) => control)).toEqual([
      { kind: "marks", marks: ["1", "1.0", "8", "high"] },
      { kind: "programs", programs: ["Warm", "8"] },
      { kind: "fixed" },
      { kind: "steps", low: 30, high: 45, step: expect.closeTo(1 / 1.8, 6) as number },
    ]);
    expect(kitchen.appliances[0]).toMatchObject({ kind: "warming box", thermostat: true });
    expect(kitchen.appliances[2]).toMatchObject({ id: "plate", kind: "other", thermostat: null });
    expect(kitchen.tests[0]?.setting).toEqual({ kind: "mark", mark: "8" });
    const setting = kitchen.tests[1]?.setting;
    expect(setting?.kind === "step" ? setting.celsius : null).toBeCloseTo((100 - 32) / 1.8, 6);
  });

  it("takes cultures from the catalogue, changed, or as one's own", () => {
    expect(
      kitchen.cultures.map(({ id, low, high, target, sources }) => [
        id,
        low,
        high,
        target,
        sources.window.kind,
      ]),
    ).toEqual([
      ["reuteri", 36.5, 39.5, 38, "common practice"],
      ["warm-blend", 39.5, 42, 41, "own"],
      ["own", 30, 33, 31.5, "own"],
    ]);
  });

  it("takes a list of one without the list, and a probe with its place alone", () => {
    expect(kitchen.tests[0]).toMatchObject({ notes: null, room: null, fill: null });
    expect(kitchen.tests[0]?.files[0]).toMatchObject({
      path: "readings/a b.csv",
      sha256: "ab".repeat(32),
      startsAt: Date.UTC(2026, 9, 3, 22, 10),
      columns: ["Jar"],
      probes: [
        { name: "Jar", place: "food", thermometer: null },
        { name: "Bath", place: "bath", thermometer: "stick" },
      ],
    });
    expect(kitchen.tests[1]?.files).toHaveLength(1);
    expect(kitchen.batches[0]).toMatchObject({ culture: "own", setting: { kind: "fixed" } });
  });

  it("keeps names that are words of JavaScript apart from what JavaScript has there", () => {
    const names = ["constructor", "toString", "hasOwnProperty", "valueOf", "prototype"];
    const entries = names.map((name) => `  ${name}:\n    stands: basin\n`);
    const found = kitchenOf(`holdband: 1\ncontainers:\n${entries.join("")}`);
    expect(found.containers.map(({ id }) => id)).toEqual(names);
    const stray = `holdband: 1\nbatches:\n  - { date: 2026-10-06, culture: toString, appliance: valueOf, container: constructor }\n`;
    expect(sentencesAbout(stray)).toHaveLength(3);
    expect(({} as Record<string, unknown>)["unit"]).toBeUndefined();
  });

  it("that the demo brings is read", () => {
    const demo = readFileSync(
      new URL("../../fixtures/kitchen/kitchen.yaml", import.meta.url),
      "utf8",
    );
    expect(kitchenOf(demo).tests.length).toBeGreaterThanOrEqual(5);
  });
});

/** Runs in under a time that no honest reading of the text would need. */
const soon = (text: string): readonly string[] => {
  const start = performance.now();
  const found = sentencesAbout(text);
  // Seconds, not milliseconds, as the machine may be busy; a runaway parse takes minutes.
  expect(performance.now() - start).toBeLessThan(20_000);
  return found;
};

describe("a text that is no kitchen is refused, soon and without a crash", () => {
  const bomb = [
    "holdband: 1",
    "a: &a [x, x, x, x, x, x, x, x, x, x]",
    ..."bcdefghij".split("").map((name, index) => {
      const before = "abcdefghi"[index] ?? "";
      return `${name}: &${name} [${`*${before}, `.repeat(10)}]`;
    }),
  ].join("\n");
  const deep = Array.from({ length: 5000 }, (_, depth) => `${" ".repeat(depth)}a:`).join("\n");
  const shallow = Array.from({ length: 90 }, (_, depth) => `${" ".repeat(depth)}a:`).join("\n");

  it.each<readonly [string, string]>([
    ["aliases in aliases", bomb],
    ["an alias of itself", "holdband: 1\nunit: &a [*a]\n"],
    ["a merge key", "holdband: 1\n<<: { unit: F }\n"],
    ["open brackets", "{".repeat(100_000)],
    ["open brackets and quotes", '["]",'.repeat(50_000)],
    ["open lists", "[".repeat(100_000)],
    ["dashes", "- ".repeat(100_000)],
    ["question marks", "? ".repeat(100_000)],
    ["keys in keys", "a: ".repeat(100_000)],
    ["steps in", deep],
    ["steps in, fewer", shallow],
    ["quotes", '"'.repeat(200_000)],
    ["anchors", "&a ".repeat(100_000)],
    ["tags", "!a ".repeat(100_000)],
    ["40,000 keys", Array.from({ length: 40_000 }, (_, index) => `key${index}: 1`).join("\n")],
    ["40,000 times one key", "holdband: 1\n".repeat(40_000)],
    ["a long word for a key", `holdband: 1\n${"x".repeat(500_000)}: 1\n`],
    ["a long word for a section's entry", `holdband: 1\ntests:\n  ${"x".repeat(1000)}:\n`],
    ["zero bytes", "\0".repeat(1_000_000)],
    ["a zero byte in a text", "holdband: 1\nunit: C\0\n"],
    ["carriage returns alone", "holdband: 1\runit: C\r"],
    ["lone surrogates", "holdband: 1\nunit: \uD800\n"],
    ["6 MB", "# comment\n".repeat(600_000)],
  ])("%s", (_, text) => {
    expect(soon(text).length).toBeGreaterThan(0);
  });

  it("a megabyte of random letters and signs", () => {
    const signs = fc.constantFrom(...":-?[]{}&*!|>'\"%@`#,\n\n\t \r ab01é".split(""));
    fc.assert(
      fc.property(fc.array(signs, { minLength: 5000, maxLength: 5000 }), (some) => {
        expect(soon(some.join("").repeat(200)).length).toBeGreaterThan(0);
      }),
      { numRuns: 3 },
    );
  });

  it("any text at all", () => {
    const signs = fc.string({
      unit: fc.constantFrom(...":-?[]{}&*!|>'\"%@`#,\n\t \rab01~é\uFEFF\u2028\0"),
      maxLength: 120,
    });
    fc.assert(
      fc.property(fc.oneof(signs, fc.string({ unit: "binary", maxLength: 200 })), (text) => {
        expect(typeof parseKitchen(text, file).ok).toBe("boolean");
        expect(typeof parseKitchen(`holdband: 1\n${text}`, file).ok).toBe("boolean");
      }),
      { numRuns: 3000 },
    );
  });

  it("any change of the demo's kitchen: read or explained with a line", () => {
    const demo = readFileSync(
      new URL("../../fixtures/kitchen/kitchen.yaml", import.meta.url),
      "utf8",
    );
    const cut = fc.record({
      at: fc.nat(demo.length),
      length: fc.nat(30),
      put: fc.oneof(
        fc.constantFrom("\t", "\n", ": ", "- ", "[", "}", "'", '"', "#", "&a ", "*a", "!", "|\n"),
        fc.string({ maxLength: 5 }),
      ),
    });
    fc.assert(
      fc.property(fc.array(cut, { minLength: 1, maxLength: 4 }), (cuts) => {
        const changed = cuts.reduce(
          (text, { at, length, put }) => text.slice(0, at) + put + text.slice(at + length),
          demo,
        );
        for (const sentence of sentencesAbout(changed)) {
          expect(sentence).toMatch(/^- (?:Line \d+.*: expected .+, found .+[.?]|and \d+ more\.)$/);
        }
      }),
      { numRuns: 600 },
    );
  });
});
