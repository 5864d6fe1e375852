import { expect, it } from "vitest";
import { recheckChartFigure } from "../../../src/report/sections/kitchen-recheck-chart.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { wordsIn } from "../drawing.ts";
import { moved, recheckedKitchen } from "../sample-recheck.ts";

const page = { analysis: recheckedKitchen(), writing: markupWriting("degC") };

it("is drawn for a page and for a phone, each with words that stand for it", async () => {
  const { html } = await recheckChartFigure(page, moved, "recheck-2");
  expect(html.match(/<svg/g)).toHaveLength(2);
  expect(html.match(/<title[^>]*>Tests of Cooker with one warm program/g)).toHaveLength(2);
  expect(html.match(/<desc[^>]*>Averages of the hold of 5 tests/g)).toHaveLength(2);
  expect(html).toContain('id="recheck-2-chart-wide-title"');
});

it("names a test of unknown day by its place", async () => {
  const words = wordsIn((await recheckChartFigure(page, moved, "recheck-2")).html);
  expect(words).toContain("test 1");
  expect(words).toContain("2026-03-02");
});
