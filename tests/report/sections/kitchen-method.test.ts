import { expect, it } from "vitest";
import { kitchenMethod } from "../../../src/report/sections/kitchen-method.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const writing = markupWriting("degC");
const text = (analysis = sampleKitchen()): string =>
  visibleText(kitchenMethod({ analysis, writing }).html);

it("says what was assumed, and for how much of the kitchen", () => {
  expect(text()).toMatch(/standard uncertainty of \d\.\d+ °C \(.*?\) was assumed for/);
  expect(text()).toContain("The room was said to stay within");
});

it("measures what was not seen by the longest test of each set-up", () => {
  const seen = /One test of (.*?) of hold was seen/.exec(text())?.[1];
  const whole = sampleKitchen();
  // The set-up tested once for the shortest time decides, not a short repeat beside a long test.
  const lengths = whole.setUps.flatMap(({ testIds }) => {
    const hours = whole.tests
      .filter(({ test }) => testIds.includes(test.id))
      .flatMap(({ analysis }) => analysis?.probes ?? [])
      .filter(({ verdicts }) => verdicts.length > 0)
      .flatMap(({ night }) => night.hold?.hours ?? []);
    return hours.length === 0 ? [] : [Math.max(...hours)];
  });
  const minutes = Math.round(Math.min(...lengths) * 60);
  expect(seen?.replaceAll("\u00a0", " ")).toBe(
    `${Math.floor(minutes / 60)} h${minutes % 60 === 0 ? "" : ` ${minutes % 60} min`}`,
  );
});
