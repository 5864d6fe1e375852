import { expect, it } from "vitest";
import { kitchenOverview } from "../../src/report/kitchen-overview.ts";
import { terminalWriting } from "../../src/report/writing.ts";
import { oneAppliance, sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

const lines = (width: number, analysis = sampleKitchen()): string[] =>
  kitchenOverview({
    colour: false,
    ascii: false,
    width,
    writing: terminalWriting("degC", false),
    analysis,
  });

it("sets set-ups against cultures where there is room, cells under their column's name", () => {
  const [head, ...rest] = lines(100);
  const at = (text: string) => head!.indexOf(text);
  expect(rest[0]).toBe("Cooker with one warm program");
  const row = rest.find((line) => line.includes("38 °C (100.4 °F), Jars in water (2 tests)"))!;
  expect(row.indexOf("HOLDS 96 %")).toBe(at("reuteri"));
  expect(row.indexOf("MISSES < 1 %")).toBe(at("warm-blend"));
  expect(row.indexOf("UNPROVEN 44 %")).toBe(at("yoghurt"));
});

it("puts the cells below the set-up's name where they do not fit beside it", () => {
  const found = lines(64);
  const name = found.findIndex((line) => line.includes("Straight in the basin (1 test)"));
  expect(found[name]).not.toContain("HOLDS");
  expect(found[name + 1]).toMatch(/^ {4}MISSES < 1 % {3}HOLDS 95 % +HOLDS 99 %$/);
});

it("lists the cultures one by one on a narrow terminal", () => {
  expect(lines(44)).toContain("  HOLDS       99 %  Yoghurt, warm set");
});

it("says what is amiss or would settle it", () => {
  expect(lines(100).join("\n")).toContain(
    "reuteri: 1.8 °C (3.2 °F) too warm; warm-blend: test once more",
  );
});

it("names appliances that were not tested, and those whose tests could not be read", () => {
  expect(lines(100).at(-1)).toBe("Cupboard over the stove: not tested yet");
  const whole = sampleKitchen();
  const unreadOnly = {
    ...whole,
    setUps: whole.setUps.filter(({ setUp }) => setUp.appliance !== "bath"),
    tests: whole.tests.filter(({ test }) => test.id !== "bath-41-jars"),
  };
  const { kitchen } = unreadOnly;
  const tests = kitchen.tests.filter(({ id }) => id !== "bath-41-jars");
  expect(lines(100, { ...unreadOnly, kitchen: { ...kitchen, tests } })).toContain(
    "Circulating bath: no test could be read",
  );
  expect(lines(100, untestedKitchen())).toContain("Warming box: not tested yet");
});

it("keeps to the appliance asked for", () => {
  expect(lines(100, oneAppliance("box")).filter((line) => /^\S/.test(line))).toEqual([
    "Warming box",
  ]);
});

it("leaves a cell empty where a set-up was not asked about a culture", () => {
  const whole = sampleKitchen();
  const [first, ...others] = whole.setUps;
  const analysis = {
    ...whole,
    setUps: [{ ...first!, verdicts: first!.verdicts.slice(1) }, ...others],
  };
  const row = lines(100, analysis).find((line) => line.includes("  Jars in water (1 test)"))!;
  expect(row).not.toContain("MISSES");
  expect(row.indexOf("UNPROVEN")).toBe(lines(100)[0]!.indexOf("warm-blend"));
});
