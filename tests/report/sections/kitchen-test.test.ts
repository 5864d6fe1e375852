import { expect, it } from "vitest";
import { readTests } from "../../../src/report/kitchen-page.ts";
import { kitchenTest, testHeading } from "../../../src/report/sections/kitchen-test.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const page = { analysis: sampleKitchen(), writing: markupWriting("degC") };
const [warm, , byHand, , bath] = readTests(page.analysis);

it("is headed by set-up and day", () => {
  expect(visibleText(testHeading(page, byHand!).html)).toBe(
    "Adjustable cooker, 38 °C (100.4 °F), Jars in water, 2026-03-09",
  );
  expect(visibleText(testHeading(page, { ...byHand!, startedAt: null }).html)).toBe(
    "Adjustable cooker, 38 °C (100.4 °F), Jars in water",
  );
});

it("names file, start, fill, room, notes, and each probe's thermometer", async () => {
  const text = visibleText((await kitchenTest(page, byHand!)).html);
  expect(text).toContain("Test “step-cooker-38-jars-by-hand”, begun 2026-03-09 21:37.");
  expect(text).toContain("File: adjustable-cooker-by-hand.csv. Room: 18 to 24 °C");
  expect(text).toContain("Notes: eight readings with the pen thermometer");
  expect(text).toContain(
    "“Jar”, in the food’s place: Pen thermometer, corrected by −0.27 ± 0.21 °C",
  );
  expect(visibleText((await kitchenTest(page, warm!)).html)).toContain(
    "Filled: water to the jars’ shoulders",
  );
});

it("draws a bath in its food's chart and folds its figures away", async () => {
  const html = (await kitchenTest(page, bath!)).html;
  expect(visibleText(html)).toContain("Files: bath-jar.csv, bath-water.tsv");
  expect(html).toContain("The bath, “Bath”, in figures</summary>");
  expect(visibleText(html)).toContain("Bath, in the bath");
  expect(html.match(/id="test-5-1-night-wide-title"/g)!.length).toBe(1);
  expect(html).not.toContain('id="test-5-2-night');
});

it("heads each probe where several stood in the food's place, one level deeper", async () => {
  const [food] = warm!.analysis.probes;
  const second = { ...food!, series: { ...food!.series, name: "Other jar" } };
  const analysis = { ...warm!.analysis, probes: [food!, second] };
  const html = (await kitchenTest(page, { ...warm!, analysis })).html;
  expect(html).toContain("<h3>“Other jar”, in the food’s place</h3>");
  expect(html.match(/<h4>In figures<\/h4>/g)!.length).toBe(2);
});
