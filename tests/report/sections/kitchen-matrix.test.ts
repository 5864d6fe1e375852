import { expect, it } from "vitest";
import { kitchenMatrix } from "../../../src/report/sections/kitchen-matrix.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { sampleKitchen, untestedKitchen } from "../sample-kitchen.ts";

const writing = markupWriting("degC");
const html = kitchenMatrix({ analysis: sampleKitchen(), writing })!.html;

it("groups set-ups by appliance, each row with the number of tests it rests on", () => {
  const rows = html.match(/<tr[\s\S]*?<\/tr>/g)!.map(visibleText);
  expect(rows.map((row) => row.slice(0, 24))).toEqual([
    "Set-up Low long-hold mil",
    "Cooker with one warm pro",
    "Jars in water 1 test Low",
    "Adjustable cooker",
    "38 °C (100.4 °F), Jars i",
    "41 °C (105.8 °F), Straig",
    "Circulating bath",
    "41 °C (105.8 °F), Jars i",
    "Warming box",
    "Mark 3, Jars on the rack",
  ]);
  expect(rows[4]).toContain("Jars in water 2 tests Low long-hold milk culture Holds 96 %");
});

it("keeps the table's roles where it is shown as a list, and heads each group", () => {
  for (const role of ["table", "rowgroup", "row", "columnheader", "rowheader", "cell"]) {
    expect(html).toContain(`role="${role}"`);
  }
  expect(html.match(/scope="rowgroup"/g)!.length).toBe(4);
  expect(html.match(/scope="row"/g)!.length).toBe(5);
});

it("is not there without a verdict", () => {
  expect(kitchenMatrix({ analysis: untestedKitchen(), writing })).toBeNull();
});
