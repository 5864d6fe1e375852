import { describe, expect, it } from "vitest";
import {
  applianceScatter,
  bySetUp,
  holdMean,
  judgedProbes,
  setUpLevels,
  tellingTests,
  type TestNights,
} from "../../src/kitchen-analysis/set-up-scatter.ts";
import { readNight } from "../../src/hold/night.ts";
import type { ProbeRole } from "../../src/readings/series.ts";
import { assumedThermometer } from "../../src/thermometer/budget.ts";
import { nightSeries } from "../culture/nights.ts";
import { waterTest } from "./small-kitchen.ts";

/** A probe that held a level for some hours; none where it never settled. */
const probe = (level: number, role: ProbeRole = "food", hoursHeld = 8) => {
  const readings = nightSeries({ hoursHeld, hold: () => level, stepMinutes: 5 });
  const night = readNight(readings, { share: 0.95 });
  return {
    fileIndex: 0,
    file: "night.csv",
    test: 0,
    series: { name: role, role, ...readings },
    thermometer: assumedThermometer,
    thermometerId: null,
    night: hoursHeld === 0 ? { ...night, hold: null, holdReadings: null } : night,
  };
};
const test = (id: string, setting: number, ...probes: TestNights["probes"]): TestNights => ({
  test: waterTest(id, [], setting),
  probes,
});
const ids = (tests: readonly TestNights[]) => tests.map((one) => one.test.id);

/** Constructed nights. */
describe("judgedProbes and holdMean", () => {
  it("go by the food, by the bath only without any food, never by the room", () => {
    const [food, bath, room] = [probe(38), probe(39, "bath"), probe(21, "room")];
    expect(judgedProbes([room, bath, food])).toEqual([food]);
    expect(judgedProbes([room, bath])).toEqual([bath]);
    expect(holdMean([room])).toBeNull();
    expect(holdMean([bath, food, probe(38.4)])).toBeCloseTo(38.2, 6);
  });
});

describe("bySetUp", () => {
  it("puts tests of the same appliance, setting and container together, in their order", () => {
    const groups = bySetUp([test("a", 38), test("b", 41), test("c", 38)]);
    expect(groups.map(ids)).toEqual([["a", "c"], ["b"]]);
  });
});

describe("tellingTests", () => {
  const good = test("good", 38, probe(38));
  const short = test("short", 38, probe(44, "food", 1.5));
  const open = test("open", 38, probe(30, "food", 0));

  it("are those with enough hold; else those that settled; else all", () => {
    expect(ids(tellingTests([open, short, good]))).toEqual(["good"]);
    expect(ids(tellingTests([open, short]))).toEqual(["short"]);
    expect(ids(tellingTests([open, open]))).toEqual(["open", "open"]);
  });

  it("are those with a probe in the food where there are any", () => {
    const bathOnly = test("bath only", 38, probe(38.6, "bath"));
    const both = test("both", 38, probe(38.7, "bath"), probe(38.1));
    expect(ids(tellingTests([bathOnly, good, both]))).toEqual(["good", "both"]);
    expect(ids(tellingTests([bathOnly, short]))).toEqual(["bath only"]);
    expect(ids(tellingTests([bathOnly, bathOnly]))).toHaveLength(2);
    const [openBath, roomOnly] = [probe(30, "bath", 0), probe(21, "room")];
    expect(
      ids(tellingTests([test("open bath", 38, openBath), test("room", 38, roomOnly)])),
    ).toEqual(["open bath"]);
    expect(ids(tellingTests([test("room", 38, roomOnly)]))).toEqual(["room"]);
    // The bath's 38.6 is no repeat of the food's 38: nothing was measured of how runs scatter.
    expect(applianceScatter("cooker", [bathOnly, good]).repeats).toBe(0);
  });

  it("alone give the set-up's levels", () => {
    expect(setUpLevels([good, short, open])[0]).toBeCloseTo(38, 6);
    expect(setUpLevels([good, short, open])).toHaveLength(1);
    expect(setUpLevels([open])).toEqual([]);
  });
});

describe("applianceScatter", () => {
  it("is the scatter within the appliance's set-ups only", () => {
    const tests = [
      test("a", 38, probe(38)),
      test("b", 38, probe(38.4)),
      test("c", 41, probe(41)),
      { ...test("d", 38, probe(50)), test: { ...waterTest("d", []), appliance: "box" } },
    ];
    // By hand: squares about 38.2 sum to 0.08; (2 x 0.045 + 0.08) / (2 + 1) = 0.056667.
    const found = applianceScatter("cooker", tests);
    expect(found.repeats).toBe(1);
    expect(found.deviation ** 2).toBeCloseTo(0.0566667, 5);
    expect(applianceScatter("box", tests).repeats).toBe(0);
  });
});
