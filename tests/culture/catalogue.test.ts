import { describe, expect, it } from "vitest";
import { cultures, findCulture } from "../../src/culture/catalogue.ts";
import type { CultureSources, FigureSource } from "../../src/culture/culture.ts";

const one = (id: string) => cultures.find((culture) => culture.id === id)!;
const parts = ["window", "target", "ceiling", "hours"] as const;

/** Numbers in a source's printed words, whatever their unit. */
const numbersIn = (printed: string): readonly number[] =>
  [...printed.matchAll(/[0-9.]+/g)].map(([number]) => Number(number));

const figuresOf = (id: string, part: keyof CultureSources): readonly number[] => {
  const { low, high, target, ceiling, hours } = one(id);
  return { window: [low, high], target: [target], ceiling: [ceiling], hours: [hours] }[part];
};

describe("catalogue", () => {
  it("has ten cultures or more, none twice, and every window in order", () => {
    expect(cultures.length).toBeGreaterThanOrEqual(10);
    expect(new Set(cultures.map(({ id }) => id)).size).toBe(cultures.length);
    for (const { id, low, target, high, ceiling } of cultures) {
      expect([low, target, high, ceiling], id).toEqual(
        [low, target, high, ceiling].toSorted((a, b) => a - b),
      );
      expect(low, id).toBeLessThan(high);
    }
  });

  it("keeps every window inside the growth limits of its organisms, where they are known", () => {
    for (const { id, low, high, growth } of cultures) {
      for (const { minimum, maximum } of growth) {
        if (minimum !== null) expect(low, id).toBeGreaterThan(minimum.celsius);
        if (maximum !== null) expect(high, id).toBeLessThanOrEqual(maximum.celsius);
      }
    }
  });

  it("prints beside every published figure what the work prints, the figure among it", () => {
    for (const { id, sources } of cultures) {
      for (const part of parts) {
        const source = sources[part];
        if (source.kind !== "published") continue;
        const printed = numbersIn(source.printed);
        for (const figure of figuresOf(id, part))
          expect(printed, `${id} ${part}`).toContain(figure);
      }
    }
  });
});

/** What the sources print, typed from them: [culture, figure, value, source]. */
const printed: readonly (readonly [string, keyof CultureSources, readonly number[], string])[] = [
  // McGee, On Food and Cooking (2004), table of fermented milks.
  ["yoghurt", "window", [41, 45], "McGee"],
  ["yoghurt", "hours", [5], "McGee"], // 2 to 5 h
  ["yoghurt-long-set", "target", [30], "McGee"],
  ["yoghurt-long-set", "hours", [12], "McGee"], // 6 to 12 h
  ["buttermilk", "target", [22], "McGee"],
  ["buttermilk", "hours", [16], "McGee"], // 14 to 16 h
  ["sour-cream", "target", [22], "McGee"],
  ["sour-cream", "hours", [16], "McGee"],
  ["creme-fraiche", "target", [20], "McGee"],
  ["creme-fraiche", "hours", [20], "McGee"], // 15 to 20 h
  ["ropy-milk", "target", [20], "McGee"],
  ["ropy-milk", "hours", [18], "McGee"],
  ["kefir", "target", [20], "McGee"],
  ["kefir", "hours", [24], "McGee"],
  ["koumiss", "target", [27], "McGee"],
  ["koumiss", "hours", [5], "McGee"], // 2 to 5 h, then aged in the cool
  // Rani et al., review of syneresis in yoghurt: incubation at 42 to 43 degC.
  ["yoghurt", "target", [43], "Rani"],
  // Hui (ed.), Food Biochemistry and Food Processing, table 26.1: optima of growth.
  ["acidophilus", "target", [37], "Hui"],
  ["helveticus", "target", [42], "Hui"],
  // One measured strain grew hardly at all above 41 degC.
  ["tempeh", "ceiling", [41], "tempeh science page"],
  // Handbook chapter on natto: optimum about 40 degC.
  ["natto", "target", [40], "chapter on natto"],
];

describe("published figures", () => {
  it.each(printed)("%s: %s is %j (%s)", (id, part, values, work) => {
    expect(figuresOf(id, part)).toEqual(values);
    const source = one(id).sources[part];
    expect(source.kind === "published" ? source.work : "").toContain(work);
  });

  it("are all in the list above", () => {
    const listed = new Set(printed.map(([id, part]) => `${id} ${part}`));
    const claimed = cultures.flatMap(({ id, sources }) =>
      parts.filter((part) => sources[part].kind === "published").map((part) => `${id} ${part}`),
    );
    expect(claimed.filter((figure) => !listed.has(figure))).toEqual([]);
    expect(claimed).toHaveLength(listed.size);
  });
});

describe("figures without a source", () => {
  const practice: FigureSource = { kind: "common practice" };

  it("say so: the long-hold milk cultures, 38 and 41 degC for 36 h, in danger from 43 on", () => {
    // Common practice, no source.
    const figures = ["reuteri", "gasseri", "warm-blend"].map((id) => {
      const { target, hours, ceiling, sources } = one(id);
      for (const part of parts) expect(sources[part], `${id} ${part}`).toEqual(practice);
      return [target, hours, ceiling];
    });
    expect(figures).toEqual([
      [38, 36, 43],
      [38, 36, 43],
      [41, 36, 43],
    ]);
  });

  it("say so for windows drawn about a single printed temperature", () => {
    for (const { id, sources } of cultures.filter((culture) => culture.id !== "yoghurt"))
      expect(sources.window, id).toEqual(practice);
  });
});

describe("findCulture", () => {
  it("finds by id whatever the case", () => {
    expect(findCulture("Kefir")).toMatchObject({ ok: true, value: { id: "kefir" } });
  });

  it("suggests the nearest name, and none when nothing is near", () => {
    expect(findCulture("yogurt")).toMatchObject({
      ok: false,
      problem: { code: "culture-unknown", facts: { suggestion: "yoghurt" } },
    });
    expect(findCulture("zzzzzzzzzz")).toMatchObject({ problem: { facts: { suggestion: "" } } });
  });
});
