import { describe, expect, it } from "vitest";
import { cultures, findCulture } from "../../src/culture/catalogue.ts";

const window = (id: string) => {
  const found = cultures.find((one) => one.id === id)!;
  return [found.low, found.high, found.hours];
};

describe("catalogue", () => {
  it("has no two cultures of one id, and every window in order", () => {
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
        if (minimum !== null) expect(low, id).toBeGreaterThan(minimum);
        if (maximum !== null) expect(high, id).toBeLessThanOrEqual(maximum);
      }
    }
  });

  it("follows the published table of fermented milks", () => {
    // McGee, On Food and Cooking (2004), table of fermented milks: yoghurt 41 to 45 degC for 2 to 5 h,
    // long set 30 degC for 6 to 12 h, buttermilk 22 degC for 14 to 16 h, kefir 20 degC for 24 h.
    expect(window("yoghurt")).toEqual([41, 45, 5]);
    expect(window("kefir")[2]).toBe(24);
    const within = (id: string, celsius: number) =>
      expect(celsius >= window(id)[0]! && celsius <= window(id)[1]!, id).toBe(true);
    within("yoghurt-long-set", 30);
    within("buttermilk", 22);
    within("kefir", 20);
  });

  it("asks 38 and 41 degC for 36 h of the two long-hold milk cultures, never above 43 (common practice, no source)", () => {
    const figures = ["reuteri", "warm-blend"].map((id) => {
      const { target, hours, ceiling } = cultures.find((one) => one.id === id)!;
      return [target, hours, ceiling];
    });
    expect(figures).toEqual([
      [38, 36, 43],
      [41, 36, 43],
    ]);
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
