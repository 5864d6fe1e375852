import { expect, it } from "vitest";
import type { ApplianceAdvice, Obstacle } from "../../../src/advice/advice-types.ts";
import { standingOf } from "../../../src/report/kitchen-standing.ts";
import {
  againstIt,
  changeText,
  disagreementTexts,
  expectedText,
  movedText,
  nextTestText,
  whereTested,
} from "../../../src/report/wording/first-answers.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import { moved } from "../sample-recheck.ts";

const writing = plainWriting("degC");
const analysis = sampleKitchen();
const standing = (id: string) =>
  standingOf(
    analysis,
    analysis.kitchen.appliances.find((one) => one.id === id)!,
  );
const adviceOn = (id: string): ApplianceAdvice =>
  analysis.advice.appliances.find(({ appliance }) => appliance === id)!;

const withObstacle = (advice: ApplianceAdvice, obstacle: Obstacle): ApplianceAdvice => ({
  ...advice,
  cultures: advice.cultures.map((one) => ({ ...one, obstacles: [obstacle] })),
});

it("says where a tested set-up holds, and what speaks against relying on it", () => {
  const [held] = standing("step-cooker").held;
  const advice = adviceOn("step-cooker");
  expect(whereTested(held!, analysis, writing)).toBe("at 38 °C (100.4 °F), jars in water");
  expect(againstIt(held!, advice, analysis, writing)).toBeNull();
  const alone = withObstacle(advice, {
    code: "stands-alone",
    setUp: held!.setUp.setUp,
    alone: 0.97,
  });
  expect(againstIt(held!, alone, analysis, writing)).toMatch(/^but its own test alone would/);
});

it("says a change and what it should do, without the appliance's name", () => {
  const { change } = standing("box");
  expect(changeText(change!, analysis, writing)).toBe(
    "Turn it to mark 4, jars on the rack as tested: should hold",
  );
  expect(expectedText(change!, writing)).toBe(", expected at 40.4 °C (104.7 °F)");
  const unsettled = { ...change!.advice.best, level: null };
  expect(
    expectedText({ ...change!, advice: { ...change!.advice, best: unsettled } }, writing),
  ).toBe("");
  const may = { ...change!, advice: { ...change!.advice, answer: "may" as const } };
  expect(changeText(may, analysis, writing)).toMatch(/: may hold$/);
});

it("says once that a set-up's tests disagree", () => {
  const [held] = standing("step-cooker").held;
  const advice = adviceOn("step-cooker");
  expect(disagreementTexts(advice, analysis, writing)).toEqual([]);
  expect(disagreementTexts(null, analysis, writing)).toEqual([]);
  const apart = withObstacle(advice, {
    code: "tests-disagree",
    setUp: held!.setUp.setUp,
    spread: 1.5,
  });
  expect(disagreementTexts(apart, analysis, writing)).toEqual([
    "Its tests at 38 °C (100.4 °F), jars in water, lie 1.5 °C (2.7 °F) apart, further than runs usually do. Find out what was different, and test it again.",
  ]);
});

it("names the test worth doing next, and what moved", () => {
  expect(nextTestText(analysis.advice.next.tests[0]!, analysis, writing)).toBe(
    "the warming box at mark 3, jars on the rack, for 36 h once it is warm",
  );
  expect(movedText(moved, analysis, writing)).toMatch(/^since .+: .+, it now holds /);
});
