import { expect, it } from "vitest";
import type { KitchenAnalysis } from "../../../src/kitchen-analysis-types.ts";
import { adviceItemId, kitchenAdvice } from "../../../src/report/sections/kitchen-advice.ts";
import { standingRows } from "../../../src/report/sections/kitchen-standing-rows.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { moved, sampleRecheck } from "../sample-recheck.ts";

const writing = markupWriting("degC");
const rows = (analysis: KitchenAnalysis, id: string): readonly string[] =>
  standingRows(
    { analysis, writing },
    analysis.kitchen.appliances.find((one) => one.id === id)!,
  ).map(({ html }) => html);

it("marks each row by a word and a look of its own", () => {
  const analysis = sampleKitchen();
  expect(rows(analysis, "warm-cooker").map((row) => /class="([^"]+)"/.exec(row)![1])).toEqual([
    "holds",
    "unproven",
    "rest",
  ]);
  const [change] = rows(analysis, "box");
  expect(change).toMatch(/^<li class="holds predicted"><span class="mark">Change</);
});

it("is where links to the advice lead that the section below leaves out, and never both", () => {
  const analysis = sampleKitchen();
  const page = { analysis, writing };
  const below = kitchenAdvice(page)!.html;
  for (const { appliance, cultures } of analysis.advice.appliances) {
    const above = rows(analysis, appliance).join("");
    for (const { culture } of cultures) {
      const id = `id="${adviceItemId(page, appliance, culture)}"`;
      expect(above.includes(id)).toBe(!below.includes(id));
    }
  }
});

it("warns first: of a set-up that moved, and of tests that disagree", () => {
  const whole = sampleKitchen();
  const [held] = whole.setUps;
  const appliances = whole.advice.appliances.map((one) => ({
    ...one,
    cultures: one.cultures.map((each) => ({
      ...each,
      obstacles: [{ code: "tests-disagree" as const, setUp: held!.setUp, spread: 1.5 }],
    })),
  }));
  const recheck = sampleRecheck({ rechecks: [{ ...moved, setUp: held!.setUp }] });
  const analysis = { ...whole, advice: { ...whole.advice, appliances, recheck } };
  const [first, second, third] = rows(analysis, "warm-cooker").map(visibleText);
  expect(first).toMatch(/^Moved since .+, it now holds /);
  expect(second).toMatch(/^Caution Its tests jars in water, lie 1.5 °C/);
  expect(third).toMatch(/^Holds /);
});
