import { describe, expect, it } from "vitest";
import { decideTogether, restsOn, type TestEvidence } from "../../src/culture/decide-together.ts";
import { futureRun } from "../../src/culture/run-to-run.ts";
import type { Verdict } from "../../src/culture/verdict-types.ts";
import { decide } from "../../src/culture/verdict.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";
import { createRandom } from "../simulator/random.ts";
import { asked, evidenceOf, swinging, type NightShape } from "./nights.ts";

const thermometer = correctedThermometer(celsiusDifference(0), celsiusDifference(0.1));
const noScatter = { value: celsiusDifference(0), from: "stated" } as const;
const test = (shape: NightShape, more: Partial<TestEvidence> = {}): TestEvidence => ({
  ...evidenceOf(shape, { thermometer, runToRun: noScatter }),
  thermometerId: "pen",
  ...more,
});
const steady = (level: number, hoursHeld = 12): NightShape => ({
  hoursHeld,
  hold: swinging(level, 0.3, 25),
});
const doubt = ({ uncertainty }: Verdict, source: string): number =>
  uncertainty.find((one) => one.source === source)?.standardUncertainty ?? 0;

const runs = (count: number) => ({ runToRun: futureRun({ deviation: 0.2, repeats: 1 }, count) });

/** What two flat tests of so many hours leave open of 36. */
const openAfter = (hoursHeld: number): number => {
  const tests = [test({ hoursHeld, hold: () => 38 }), test({ hoursHeld, hold: () => 38 })];
  return doubt(decideTogether(asked(37, 39, 36), tests), "hours not tested");
};

/** Constructed nights throughout. */
describe("decideTogether with one test", () => {
  it("gives bit for bit what decide gives", () => {
    const random = createRandom(11, "one test");
    const words = new Set<string>();
    for (let trial = 0; trial < 25; trial += 1) {
      const level = random.uniform(36, 40.5);
      const drift = random.normal(0, 0.04);
      const swing = swinging(0, random.uniform(0, 0.6), random.uniform(10, 60));
      const shape: NightShape = {
        hoursHeld: random.uniform(0.4, 38),
        hold: (hour) => level + drift * hour + swing(hour),
        stepMinutes: random.choice([1, 5, 60]),
      };
      const evidence = test(shape, {
        runToRun: { value: celsiusDifference(0.3), from: "assumed" },
        thermometer: random.chance(0.5)
          ? thermometer
          : specifiedThermometer(celsiusDifference(0.5), "stated"),
        room: random.chance(0.5) ? { low: 17, high: 24 } : null,
      });
      const wanted = asked(36, 40, random.choice([8, 24, 36]), random.chance(0.5) ? 43 : null);
      const alone = decide(wanted, evidence);
      words.add(alone.verdict);
      expect(decideTogether(wanted, [evidence])).toEqual(alone);
    }
    expect(words.size).toBe(3);
  });
});

describe("decideTogether with several tests", () => {
  it("is about the mean of the tests' means", () => {
    const verdict = decideTogether(asked(37, 38.5, 10), [test(steady(38)), test(steady(40))]);
    expect(verdict.reasons).toContainEqual(
      expect.objectContaining({ code: "mean-outside", side: "above" }),
    );
    const reason = verdict.reasons.find(({ code }) => code === "mean-outside");
    // Both nights swing about their level; the mean of a whole number of cycles is the level.
    expect(reason).toMatchObject({ mean: expect.closeTo(39, 2) });
  });

  it("is the conformance probability of a normal offset about that mean", () => {
    // JCGM 106:2012, 6.2, as in the test of decide: two nights with a swing of 0.3 about 39.8 and
    // 40.2; 5 % of a sine's time lies above 0.98769 of its amplitude (arcsine law), so the upper edge
    // is met up to an offset of 41 - 40.2963 = 0.7037. One thermometer of 0.5 degC: Phi(0.7037 / 0.5)
    // = 0.92032. Two such thermometers, independent: 0.5 / sqrt(2), Phi(1.9904) = 0.97672.
    const wide = correctedThermometer(celsiusDifference(0), celsiusDifference(0.5));
    const taken = (thermometerId: string, level: number) =>
      test(steady(level), { thermometer: wide, thermometerId });
    const same = decideTogether(asked(30, 41, 10), [taken("a", 39.8), taken("a", 40.2)]);
    const different = decideTogether(asked(30, 41, 10), [taken("a", 39.8), taken("b", 40.2)]);
    // 0.01: what 256 scenarios of the slow part and 12 steps of the swing leave open.
    expect(Math.abs(same.probability - 0.92032)).toBeLessThan(0.01);
    expect(Math.abs(different.probability - 0.97672)).toBeLessThan(0.01);
  });

  it("does not depend on the order of the tests but for rounding", () => {
    const tests = [test(steady(38.2, 8)), test(steady(38.6, 20)), test(steady(38.9, 12))];
    const wanted = asked(36.5, 39.5, 24);
    const forth = decideTogether(wanted, tests).probability;
    expect(decideTogether(wanted, tests.toReversed()).probability).toBeCloseTo(forth, 9);
  });

  it("takes independent doubts down with the number of tests, a shared thermometer's not", () => {
    const sparse = { ...steady(38), stepMinutes: 30 };
    const one = decideTogether(asked(37, 39, 10), [test(sparse, { resolution: 0.1 })]);
    const four = decideTogether(
      asked(37, 39, 10),
      Array.from({ length: 4 }, () => test(sparse, { resolution: 0.1 })),
    );
    expect(doubt(four, "thermometer")).toBeCloseTo(doubt(one, "thermometer"), 12);
    expect(doubt(four, "resolution")).toBeCloseTo(doubt(one, "resolution") / 2, 12);
    expect(doubt(four, "mean of the hold")).toBeCloseTo(doubt(one, "mean of the hold") / 2, 12);
  });

  it("does not let a short test of the same level weaken a long one", () => {
    const wanted = asked(37, 39, 36);
    const long = (count: number) => test(steady(38, 36), runs(count));
    const byHand = { ...steady(38, 8), stepMinutes: 60 };
    const alone = decideTogether(wanted, [long(1)]).probability;
    expect(decideTogether(wanted, [test(byHand, runs(1))]).probability).toBeLessThan(alone - 0.05);
    for (const short of [steady(38, 4), steady(38, 8), byHand]) {
      const both = decideTogether(wanted, [long(2), test(short, runs(2))]);
      expect(both.probability).toBeGreaterThan(alone);
    }
  });

  it("leaves more open the shorter all tests are", () => {
    expect(openAfter(6)).toBeGreaterThan(openAfter(20));
    expect(openAfter(20)).toBeGreaterThan(openAfter(36));
    expect(openAfter(36)).toBe(0);
  });
});

describe("the tests a verdict rests on", () => {
  const good = test(steady(38));
  const short = test({ hoursHeld: 1.5, hold: () => 44 });
  const open = { ...good, night: { ...good.night, hold: null, holdReadings: null } };
  const reaching = (peak: number) => ({ ...open, night: { ...open.night, peak } });

  it("are those with enough hold; else those that settled; else all", () => {
    expect(short.night.hold).not.toBeNull();
    expect(restsOn([open, short, good])).toEqual([good]);
    expect(restsOn([open, short])).toEqual([short]);
    expect(restsOn([open])).toEqual([open]);
  });

  it("alone decide", () => {
    const wanted = asked(37, 39, 10);
    expect(decideTogether(wanted, [good, short, open])).toEqual(decide(wanted, good));
  });

  it("say by the highest temperature reached where none settled", () => {
    const wanted = asked(60, 62, 10);
    expect(decideTogether(wanted, [reaching(31), reaching(30)])).toEqual(
      decide(wanted, reaching(31)),
    );
  });
});
