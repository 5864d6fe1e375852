import { describe, expect, it } from "vitest";
import { cultures } from "../../src/culture/catalogue.ts";
import { cultureWith } from "../../src/culture/own-culture.ts";

const yoghurt = cultures.find(({ id }) => id === "yoghurt")!;
const own = { kind: "own" };

// Constructed cases; the yoghurt's own figures stand in catalogue.test.ts.
describe("cultureWith", () => {
  it("changes what is given and nothing else, source by source", () => {
    const changed = cultureWith(yoghurt, { high: 44, hours: 8, target: null })!;
    expect(changed).toEqual({
      ...yoghurt,
      high: 44,
      hours: 8,
      sources: { ...yoghurt.sources, window: own, hours: own },
    });
    expect(changed.sources.target.kind).toBe("published");
  });

  it("is the culture itself where nothing is given", () => {
    expect(cultureWith(yoghurt, {})).toEqual(yoghurt);
  });

  it("makes one's own from nothing: target in the middle, ceiling at the top, all of it own", () => {
    expect(cultureWith(null, { id: "attic", low: 30, high: 33, hours: 20 })).toEqual({
      id: "attic",
      name: "attic",
      low: 30,
      high: 33,
      target: 31.5,
      ceiling: 33,
      hours: 20,
      sources: { window: own, target: own, ceiling: own, hours: own },
      growth: [],
    });
  });

  it.each(["id", "low", "high", "hours"])("is none without %s", (missing) => {
    const figures = { id: "attic", low: 30, high: 33, hours: 20, [missing]: null };
    expect(cultureWith(null, figures)).toBeNull();
  });
});
