import { expect, it } from "vitest";
import { methodSection } from "../../../src/report/sections/method.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { holdsNight, unprovenNight } from "../sample-analysis.ts";

const writing = markupWriting("degC");

it("says what was assumed and what is not known", () => {
  const text = visibleText(methodSection(unprovenNight(), writing).html);
  expect(text).toContain("it was assumed good to ±1 °C (±1.8 °F)");
  expect(text).toContain("a standard uncertainty of 0.30 °C (0.54 °F) was assumed");
  expect(text).toContain("The room’s warmest and coldest were not given");
  expect(text).toContain("The test saw 7 h 17 min of hold, and an answer for 36 h looks beyond it");
});

it("does not call assumed what was measured or stated", () => {
  const night = { ...holdsNight(), room: { low: 17, high: 25 } };
  const text = visibleText(methodSection(night, writing).html);
  expect(text).not.toContain("Nothing was said about the thermometer");
  expect(text).toContain("The room was said to stay within 17.0 to 25.0 °C");
});

it("explains the three words with the confidence and share in force", () => {
  const text = visibleText(
    methodSection({ ...holdsNight(), confidence: 0.9, share: 0.8 }, writing).html,
  );
  expect(text).toContain("Holds means a probability of 90 % or more that at least 80 %");
  expect(text).toContain("Misses means 10 % or less");
});
