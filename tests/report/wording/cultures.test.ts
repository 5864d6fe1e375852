import { expect, it } from "vitest";
import { cultures } from "../../../src/culture/catalogue.ts";
import { cultureName, shortCultureName, windowMark } from "../../../src/report/wording/cultures.ts";
import { requirement } from "../sample-analysis.ts";

const asked = (culture: string, name: string) => ({
  ...requirement(culture, 38, 40, null, 24),
  name,
});

it("calls a window typed by hand the person's own", () => {
  const own = asked("window", "");
  expect([cultureName(own), shortCultureName(own), windowMark(own)]).toEqual([
    "your window",
    "your window",
    "window",
  ]);
});

it("shortens every name of the catalogue to something that still tells it apart", () => {
  const short = cultures.map(({ id, name }) => shortCultureName(asked(id, name)));
  expect(new Set(short).size).toBe(cultures.length);
  for (const name of short) expect(name).toMatch(/^[^()]{3,40}$/);
  expect(short).toContain("Low long-hold milk culture");
});

it("keeps a name that is all in brackets, and marks charts with the id", () => {
  expect(shortCultureName(asked("x", "(grains)"))).toBe("(grains)");
  expect(windowMark(asked("kefir", "Kefir (grains)"))).toBe("kefir");
});
