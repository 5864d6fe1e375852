import { expect, it } from "vitest";
import {
  answersFor,
  contextOf,
  startOf,
  windowName,
} from "../../../src/report/sections/probe-page.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { analysisOf, probe, severalProbes, startWallClock } from "../sample-analysis.ts";

const analysis = severalProbes();
const writing = plainWriting("degC");
const page = (at: number) => ({ analysis, probe: analysis.probes[at]!, writing, id: "p" });

it("finds bath and room of the same file for context, never another food probe", () => {
  expect(contextOf(page(0)).map(({ name }) => name)).toEqual(["basin", "kitchen"]);
  expect(contextOf(page(1)).map(({ name }) => name)).toEqual(["kitchen"]);
  expect(contextOf(page(3))).toEqual([]);
  expect(startOf(page(3))).toBe(startWallClock);
});

it("answers for probes with a verdict, or for all where none has one", () => {
  expect(analysis.probes.map((each) => answersFor(analysis, each))).toEqual([
    true,
    false,
    false,
    true,
  ]);
  const shape = { level: 40, swing: 0, periodMinutes: 9, perHour: 0, stepSeconds: 600, hours: 5 };
  const unasked = analysisOf([probe({ shape })]);
  expect(answersFor(unasked, unasked.probes[0]!)).toBe(true);
});

it("names a window by its culture where it has one", () => {
  const [first] = analysis.probes[0]!.verdicts;
  expect(windowName(first!, writing)).toMatch(/^window of Yoghurt, warm set, 38 to 43 °C/);
  const own = { ...first!, requirement: { ...first!.requirement, name: "" } };
  expect(windowName(own, writing)).toBe("window you gave, 38 to 43 °C (100.4 to 109.4 °F)");
});
