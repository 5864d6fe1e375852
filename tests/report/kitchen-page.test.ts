import { expect, it } from "vitest";
import {
  appliancesOf,
  counted,
  readTests,
  reasonContext,
  setUpId,
  setUpsOf,
  shownProbeOf,
  testId,
  testsBehind,
  unreadTests,
} from "../../src/report/kitchen-page.ts";
import { plainWriting } from "../../src/report/writing.ts";
import { oneAppliance, sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

const writing = plainWriting("degC");
const whole = sampleKitchen();
const repeated = whole.setUps[1]!;

it("parts tests that were read from those that were not", () => {
  expect(readTests(whole).length).toBe(6);
  expect(unreadTests(whole).map(({ test }) => test.id)).toEqual(["bath-42-jars"]);
});

it("gives an appliance its set-ups, and a set-up its tests, oldest first", () => {
  const [cooker] = whole.kitchen.appliances.slice(1);
  expect(setUpsOf(whole, cooker!).length).toBe(2);
  expect(testsBehind(whole, repeated).map(({ test }) => test.id)).toEqual([
    "step-cooker-38-jars",
    "step-cooker-38-jars-by-hand",
  ]);
});

it("is about every appliance, untested ones too, or about the one asked for", () => {
  expect(appliancesOf(untestedKitchen()).length).toBe(5);
  expect(appliancesOf(oneAppliance("box")).map(({ id }) => id)).toEqual(["box"]);
  expect(appliancesOf(whole).length).toBe(5);
});

it("gives places on the page that differ", () => {
  const ids = [
    ...whole.setUps.map((one) => setUpId(whole, one)),
    ...whole.tests.map((one) => testId(whole, one)),
  ];
  expect(new Set(ids).size).toBe(12);
  expect(ids).not.toContain("set-up-0");
});

it("finds in each test the probe a set-up's answers are about", () => {
  const [, first, second] = readTests(whole);
  expect(shownProbeOf(first!, repeated)!.thermometerId).toBe("jar-logger");
  expect(shownProbeOf(second!, repeated)!.thermometerId).toBe("pen");
  const [bath] = readTests(whole);
  expect(shownProbeOf(bath!, whole.setUps[0]!)!.series.role).toBe("food");
});

it("gives reasons the newest test's thermometer: its specification where that is all that is known", () => {
  const page = { analysis: whole, writing };
  expect(reasonContext(page, repeated).thermometerAccuracy).toBeNull();
  const tests = whole.tests.map((one) =>
    one.test.id === "box-3-rack" && one.analysis !== null
      ? {
          ...one,
          analysis: {
            ...one.analysis,
            probes: one.analysis.probes.map((probe) => ({
              ...probe,
              thermometer: { ...probe.thermometer, accuracy: 0.5 as never },
            })),
          },
        }
      : one,
  );
  const stated = { analysis: { ...whole, tests }, writing };
  expect(reasonContext(stated, whole.setUps[4]!).thermometerAccuracy).toBe(0.5);
  expect(reasonContext(stated, whole.setUps[4]!).role).toBe("food");
});

it("counts in words", () => {
  expect([counted(1, "test"), counted(0, "test"), counted(3, "set-up")]).toEqual([
    "1 test",
    "0 tests",
    "3 set-ups",
  ]);
});
