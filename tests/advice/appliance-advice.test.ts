import { describe, expect, it } from "vitest";
import { adviseAppliance, applianceAdvice } from "../../src/advice/appliance-advice.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, basin, cooker, fixed, jars, settledTest, step } from "./constructed.ts";

const requirements = [asked(37, 39, 12), asked(40, 42, 24)];
const tests = [
  settledTest({ id: "first", level: 38.1, setting: step(38) }),
  settledTest({ id: "second", level: 38.3, setting: step(38) }),
  settledTest({ id: "third", level: 41.9, setting: step(42), container: "basin" }),
];
const input = adviceInput({ requirements, containers: [jars, basin], tests });
const advised = adviseAppliance(cooker(), input);
const elsewhere = {
  appliance: "bath",
  setUp: { appliance: "bath", setting: fixed, container: "jars" },
  probability: 0.9,
  basis: "tested",
} as const;
const advice = applianceAdvice(advised, () => elsewhere);

describe("applianceAdvice", () => {
  it("keeps what holds as it is, and changes least for what does not", () => {
    const [low, high] = advice.cultures;
    expect(low).toMatchObject({ answer: "can", change: "none", obstacles: [], elsewhere: null });
    expect(low!.best!.setUp.setting).toEqual(step(38));
    expect(low!.best!.testIds).toEqual(["first", "second"]);
    expect(high!.best!.basis).not.toBe("tested");
    expect(["setting", "container"]).toContain(high!.change);
    expect(Math.abs(high!.best!.level!.mean - 41)).toBeLessThan(0.7);
  });

  it("lists its tests with their doubt, run to run left out", () => {
    expect(advice.tests.map(({ testId }) => testId)).toEqual(["first", "second", "third"]);
    for (const { standardUncertainty } of advice.tests) {
      // The thermometer's 0.05, and a constructed hold that shows little more.
      expect(standardUncertainty).toBeGreaterThanOrEqual(0.05);
      expect(standardUncertainty).toBeLessThan(0.1);
    }
  });

  it("states each assumption, and none less sure after the tests than its prior by more than the scatter grew", () => {
    const grown = Math.max(1, advice.scatter.now / advice.scatter.prior);
    expect(advice.terms.map(({ term }) => term.code)).toEqual([
      "level",
      "slope",
      "room",
      "share-lost",
      "share-lost",
    ]);
    for (const { prior, now } of advice.terms) {
      expect(now.standardDeviation).toBeLessThanOrEqual(prior.standardDeviation * grown + 1e-9);
    }
    const slope = advice.terms[1]!;
    expect(slope.now.standardDeviation).toBeLessThan(slope.prior.standardDeviation);
  });

  it("draws a curve for each container over every setting, tested ones marked", () => {
    expect(advice.curves.map(({ container }) => container)).toEqual(["jars", "basin"]);
    for (const { container, points } of advice.curves) {
      expect(points).toHaveLength(16);
      const tested = points.filter(({ basis }) => basis === "tested");
      expect(tested.map(({ setting }) => setting)).toEqual([
        container === "jars" ? step(38) : step(42),
      ]);
      for (const { level } of points) {
        expect(level.low).toBeLessThan(level.mean);
        expect(level.high).toBeGreaterThan(level.mean);
      }
    }
  });

  it("names the candidates that were tested or may serve a culture, and no others", () => {
    const chances = advice.candidates.map((one) =>
      one.chances.map(({ probability }) => probability),
    );
    expect(advice.candidates.filter(({ basis }) => basis === "tested")).toHaveLength(2);
    for (const [at, one] of advice.candidates.entries()) {
      expect(one.basis === "tested" || Math.max(...chances[at]!) > 0.01).toBe(true);
    }
    const bests = advice.cultures.map(({ best }) => best);
    for (const best of bests) expect(advice.candidates).toContain(best);
  });

  it("says nothing can be said where the kitchen has no container", () => {
    const none = adviseAppliance(cooker(), adviceInput({ requirements, containers: [] }));
    const [first] = applianceAdvice(none, () => null).cultures;
    expect(first).toMatchObject({ answer: "unknown", best: null, chance: null, obstacles: [] });
  });

  it("points elsewhere only where it cannot be sure itself", () => {
    const cold = adviseAppliance(
      cooker({ control: { kind: "fixed" } }),
      adviceInput({
        requirements,
        appliances: [cooker({ control: { kind: "fixed" } })],
        tests: [settledTest({ level: 34, setting: fixed })],
      }),
    );
    const [first] = applianceAdvice(cold, () => elsewhere).cultures;
    expect(first).toMatchObject({ answer: "cannot", change: "none", elsewhere });
    expect(first!.obstacles[0]).toMatchObject({ code: "too-cold-at-highest" });
  });
});
