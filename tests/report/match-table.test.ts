/** Constructed: the advice is invented, see sample-advice.ts. */
import { expect, it } from "vitest";
import { matchList } from "../../src/report/match-list.ts";
import { matchTable } from "../../src/report/match-table.ts";
import { colourCodes, longestOf, screenOf } from "./advice-screen.ts";
import { hostileKitchen, manyCultures, oneAppliance, sampleKitchen } from "./sample-kitchen.ts";

const at = (width: number, analysis = sampleKitchen()) => matchTable(screenOf(analysis, { width }));

it("sets cultures against appliances, each cell below its appliance's name", () => {
  const lines = at(120);
  const [head] = lines;
  const row = lines.findIndex((line) => line.startsWith("reuteri"));
  const column = head!.indexOf("Adjustable cooker");
  const cell = lines.slice(row, row + 4).map((line) => line.slice(column, column + 20).trim());
  expect(cell).toEqual(["CAN 96 %", "38 °C (100.4 °F)", "Jars in water", "tested"]);
});

it("gives each culture one row, parted by an empty line", () => {
  const names = at(100)
    .map((line) => /^\S+/.exec(line)?.[0])
    .filter((name) => name !== undefined);
  expect(names).toEqual(["reuteri", "warm-blend", "yoghurt"]);
  expect(at(100).filter((line) => line === "")).toHaveLength(3);
});

it("parts no number from its unit within a cell", () => {
  const text = at(80).join("\n");
  const signs = text.match(/[°%]/g)!;
  expect(signs.length).toBeGreaterThan(20);
  expect(text.match(/\d (?:°[CF]|%)/g)).toHaveLength(signs.length);
});

it("becomes a list where a word would not fit its column", () => {
  expect(at(60)).toEqual(matchList(screenOf(sampleKitchen(), { width: 60 })));
  expect(at(80)).not.toEqual(matchList(screenOf(sampleKitchen(), { width: 80 })));
});

it("fits a narrow terminal where there are few appliances", () => {
  const lines = at(60, oneAppliance("box"));
  expect(lines[0]!.trim()).toBe("Warming box");
});

it.each([40, 60, 72, 80, 100, 120])("keeps to %d columns", (width) => {
  for (const kitchen of [sampleKitchen(), manyCultures(), hostileKitchen()]) {
    expect(longestOf(at(width, kitchen))).toBeLessThanOrEqual(width);
  }
});

it.each([60, 80, 120])("adds colour to the answers' words only, at %d columns", (width) => {
  const coloured = matchTable(screenOf(sampleKitchen(), { width, colour: true }));
  expect(coloured.map((line) => line.replaceAll(colourCodes, ""))).toEqual(at(width));
  const words = coloured
    .join("\n")
    // oxlint-disable-next-line no-control-regex
    .matchAll(/\u001b\[1;\d+m(\w+)\u001b\[0m/g);
  const found = [...words].map(([, word]) => word);
  expect(found).toHaveLength(15);
  expect(found.every((word) => /^(?:CAN|MAY|CANNOT|UNKNOWN)$/.test(word!))).toBe(true);
});

it("leaves a cell empty where an appliance was not asked about a culture", () => {
  const whole = sampleKitchen();
  const [first, ...others] = whole.advice.appliances;
  const appliances = [{ ...first!, cultures: first!.cultures.slice(1) }, ...others];
  const analysis = { ...whole, advice: { ...whole.advice, appliances } };
  const lines = at(120, analysis);
  const row = lines.find((line) => line.startsWith("reuteri"))!;
  expect(row.slice(12, lines[0]!.indexOf("Adjustable")).trim()).toBe("");
  expect(row.indexOf("CAN 96 %")).toBe(lines[0]!.indexOf("Adjustable"));
  const coloured = matchTable(screenOf(analysis, { width: 120, colour: true }));
  expect(coloured.map((line) => line.replaceAll(colourCodes, ""))).toEqual(lines);
});
