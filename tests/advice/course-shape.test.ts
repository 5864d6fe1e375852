import { describe, expect, it } from "vitest";
import { gatheredProbability } from "../../src/advice/gathered-plays.ts";
import { holdPlays } from "../../src/culture/hold-plays.ts";
import { requirementProbability } from "../../src/culture/probability.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, basin, cooker, jars, known, settledTest, step } from "./constructed.ts";

const requirement = asked(37, 39, 24);
const shaped = (tests: Parameters<typeof settledTest>[0][], appliance = cooker()) =>
  known(
    appliance,
    adviceInput({
      appliances: [appliance],
      requirements: [requirement],
      containers: [jars, basin],
      tests: tests.map((one, at) => settledTest({ id: `${at}`, ...one })),
    }),
  );
const setUp = (setting: number, container = "jars") => ({
  appliance: "cooker",
  setting: step(setting),
  container,
});

describe("courseShapes", () => {
  it("takes the course of a tested set-up from its own test, as the verdict does", () => {
    const { shapeOf, response } = shaped([
      { level: 38, swing: { peakToPeak: 1, periodMinutes: 30 } },
    ]);
    const shape = shapeOf(setUp(38));
    const { evidence } = response.tests[0]!.settled;
    const offset = { halfWidth: 0, standardDeviation: 0.3 };
    const own = requirementProbability(holdPlays(requirement, evidence).plays, offset).met;
    const found = gatheredProbability(shape.outlook(requirement).gathered, 0, offset).met;
    expect(shape.level).toBe(evidence.hold.mean);
    expect(Math.abs(found - own)).toBeLessThan(2e-4);
    expect(shape.peakToPeak).toBeCloseTo(1, 1);
  });

  it("prefers the same container, then a long enough hold, then the nearest setting", () => {
    const tests = [
      { setting: step(38), container: "basin", level: 38 },
      { setting: step(44), level: 44 },
      { setting: step(41), level: 41 },
      { setting: step(39), level: 39, hoursHeld: 2 },
    ];
    const { shapeOf } = shaped(tests);
    expect(shapeOf(setUp(38)).reference!.id).toBe("2");
    expect(shapeOf(setUp(45)).reference!.id).toBe("1");
    expect(shapeOf(setUp(45, "basin")).reference!.id).toBe("0");
  });

  it("widens a swing on its way from jars into the basin and narrows it the other way", () => {
    const swing = { peakToPeak: 1, periodMinutes: 30 };
    const slow = shaped([{ level: 38, swing }]).shapeOf(setUp(38, "basin"));
    const quick = shaped([{ level: 38, swing, container: "basin" }]).shapeOf(setUp(38));
    expect(slow.peakToPeak!).toBeGreaterThan(1.5);
    expect(quick.peakToPeak!).toBeLessThan(0.7);
    expect(quick.band.high - quick.band.low).toBeLessThan(slow.band.high - slow.band.low);
  });

  it("assumes a thermostat's swing, or a wander without one, where nothing was tested", () => {
    const kept = shaped([]).shapeOf(setUp(38));
    const none = shaped([], cooker({ thermostat: false })).shapeOf(setUp(38));
    expect(kept.reference).toBeNull();
    expect(kept.peakToPeak!).toBeGreaterThan(0);
    expect(none.peakToPeak).toBeNull();
    expect(none.assumedDeviation).toBeGreaterThan(kept.assumedDeviation);
  });

  it("works each outlook out once", () => {
    const { shapeOf } = shaped([{ level: 38 }]);
    const shape = shapeOf(setUp(38));
    expect(shapeOf(setUp(40))).toBe(shape);
    expect(shape.outlook(requirement)).toBe(shape.outlook(requirement));
  });
});
