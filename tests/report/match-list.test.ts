/** Constructed: the advice is invented, see sample-advice.ts. */
import { expect, it } from "vitest";
import { matchList } from "../../src/report/match-list.ts";
import { colourCodes, flat, longestOf, screenOf } from "./advice-screen.ts";
import { manyCultures, sampleKitchen } from "./sample-kitchen.ts";

it("gives each culture a heading and each appliance a line that begins with its answer", () => {
  const lines = matchList(screenOf(sampleKitchen(), { width: 120 }));
  expect(lines.filter((line) => /^\S/.test(line))).toEqual([
    "reuteri: Low long-hold milk culture",
    "warm-blend: Warm long-hold blend",
    "yoghurt: Yoghurt, warm set",
  ]);
  expect(lines).toContain(
    "  CAN 96 %: Adjustable cooker, 38 °C (100.4 °F), Jars in water (tested)",
  );
  expect(lines.filter((line) => /^ {2}(?:CAN|MAY|CANNOT|UNKNOWN) /.test(line))).toHaveLength(15);
});

it("calls a window typed by hand by its mark alone", () => {
  const whole = sampleKitchen();
  const requirements = whole.requirements.map((one) => ({ ...one, name: "" }));
  expect(matchList(screenOf({ ...whole, requirements }))[0]).toBe("window");
});

it("names the appliance even where it offers nothing", () => {
  const whole = sampleKitchen();
  const appliances = whole.advice.appliances.map((one) => ({
    ...one,
    cultures: one.cultures.map((each) => ({ ...each, best: null, chance: null })),
  }));
  const lines = matchList(screenOf({ ...whole, advice: { ...whole.advice, appliances } }));
  expect(flat(lines)).toContain("UNKNOWN: Cupboard over the stove (nothing to choose)");
});

it.each([40, 60, 80])("keeps to %d columns, colour added or not", (width) => {
  const screen = screenOf(manyCultures(), { width });
  const plain = matchList(screen);
  expect(longestOf(plain)).toBeLessThanOrEqual(width);
  const coloured = matchList({ ...screen, colour: true });
  expect(coloured.map((line) => line.replaceAll(colourCodes, ""))).toEqual(plain);
  expect(coloured.join("").match(colourCodes)).toHaveLength(2 * 5 * 6);
});
