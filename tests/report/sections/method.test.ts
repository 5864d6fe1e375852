import { expect, it } from "vitest";
import { slowPrior } from "../../../src/culture/slow-prior.ts";
import { methodSection } from "../../../src/report/sections/method.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { holdsNight, missesNight, unprovenNight } from "../sample-analysis.ts";

const writing = markupWriting("degC");

it("says what was assumed and what is not known", () => {
  const text = visibleText(methodSection(unprovenNight(), writing).html);
  expect(text).toContain("it was assumed good to ±1 °C (±1.8 °F)");
  expect(text).toContain("a standard uncertainty of 0.30 °C (0.54 °F) was assumed");
  expect(text).toContain(
    "were not given: 4.0 °C (7.2 °F) between them, day and night, were assumed",
  );
  expect(text).toContain(
    "One test of 7 h 17 min of hold was seen, and an answer for 36 h looks beyond it",
  );
  expect(text).not.toContain("one chance in five");
});

it("says of a hold that fell away that a person may have ended it", () => {
  const night = missesNight();
  const [first] = night.probes;
  const [verdict] = first!.verdicts;
  const reasons = [{ code: "fell-away", afterHours: 8, needed: 24 } as const];
  const verdicts = [{ ...verdict!, reasons }];
  const text = visibleText(
    methodSection({ ...night, probes: [{ ...first!, verdicts }] }, writing).html,
  );
  expect(text).toContain("one chance in five was given to a person");
});

it("tells the figures the program counts with", () => {
  const night = { cycling: false, warmUpMinutes: 60, testedHours: 9 };
  expect(slowPrior({ ...night, roomRange: null })).toEqual(slowPrior({ ...night, roomRange: 4 }));
  const passed = slowPrior({ ...night, roomRange: 2 * Math.SQRT2 }).map(
    ({ strengths }) => strengths.daily,
  );
  // "from nearly nothing to nine tenths"
  expect(Math.max(...passed)).toBeCloseTo(0.9, 9);
  expect(Math.min(...passed)).toBeLessThan(0.02);
});

it("does not call assumed what was measured or stated", () => {
  const night = { ...holdsNight(), room: { low: 17, high: 25 } };
  const text = visibleText(methodSection(night, writing).html);
  expect(text).not.toContain("Nothing was said about the thermometer");
  expect(text).toContain("The room was said to stay within 17 to 25 °C");
});

it("explains the three words with the confidence and share in force", () => {
  const text = visibleText(
    methodSection({ ...holdsNight(), confidence: 0.9, share: 0.8 }, writing).html,
  );
  expect(text).toContain("Holds means a probability of 90 % or more that at least 80 %");
  expect(text).toContain("Misses means 10 % or less");
});
