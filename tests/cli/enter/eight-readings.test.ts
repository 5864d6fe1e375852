/**
 * Eight readings by hand over a night, from typed lines to the verdict: is the
 * answer useful, and is it careful? Truth from the simulator (tests/simulator):
 * thermostatted appliances that reach their hold within five hours and are
 * left on. The person looks at 21:30, about 22:30, 23:30, 0:30, 1:30, 3:00,
 * 6:00 and at 7:00; each reading is off by up to 0.2 degC and typed in steps of
 * 0.1.
 */
import { beforeAll, describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis.ts";
import type { ProbeAnalysis } from "../../../src/analysis.ts";
import { problemText } from "../../../src/problem.ts";
import { celsius, celsiusDifference, fraction, hours } from "../../../src/quantity.ts";
import type { Celsius } from "../../../src/quantity.ts";
import { pipedReadings } from "../../../src/readings/typed/piped-readings.ts";
import { typedCsv } from "../../../src/readings/typed/typed-csv.ts";
import { specifiedThermometer } from "../../../src/thermometer/budget.ts";
import { sourceOf, encode } from "../../readings/reading-helpers.ts";
import { morning } from "../../readings/typed/typed-helpers.ts";
import { verdictTruth } from "../../simulator/case-truth.ts";
import { createRandom } from "../../simulator/random.ts";
import type { Random } from "../../simulator/random.ts";
import { valueAt } from "../../simulator/run.ts";
import { holdTimes } from "../../simulator/truth.ts";
import { isPlausible, sampleWorld } from "../../simulator/world.ts";
import type { World } from "../../simulator/world.ts";

const cases = 60;
const looks = [0, 60, 120, 180, 240, 330, 510, 570];
const nightEnd = 570 * 60;
const latestStart = 300 * 60;
const byHand = 0.2;

interface Night {
  readonly world: World;
  readonly start: number;
  readonly random: Random;
}

const nightOf = (seed: number): Night | null => {
  const world = sampleWorld(seed * 7919, 0, {});
  const left = world.plan.switchOff >= nightEnd && world.sampled.kind !== "unthermostatted";
  if (!left || !isPlausible(world)) return null;
  const { start } = holdTimes(world.run, world.settled, nightEnd);
  if (start === null || start > latestStart) return null;
  return { world, start, random: createRandom(seed, "by hand") };
};

/** "22:34 38.2" for each look, a few minutes early or late. */
const typedLines = ({ world: { run }, random }: Night): readonly string[] =>
  looks.map((minute, at) => {
    const isEnd = at === 0 || at === looks.length - 1;
    const looked = minute + (isEnd ? 0 : random.integer(-9, 9));
    const reading = valueAt(run, run.food, looked * 60) + random.uniform(-byHand, byHand);
    const clock = (21 * 60 + 30 + looked) % 1440;
    const time = `${Math.floor(clock / 60)}:${String(clock % 60).padStart(2, "0")}`;
    return `${time} ${reading.toFixed(1)} !`;
  });

const trueMean = ({ world: { run }, start }: Night): number => {
  let [sum, count] = [0, 0];
  for (let time = start; time <= nightEnd; time += run.stepSeconds) {
    sum += valueAt(run, run.food, time);
    count += 1;
  }
  return sum / count;
};

/** To half a degree, as people write windows. */
const edge = (value: number): Celsius => celsius(Math.round(value * 2) / 2);

/** A window somewhere about the hold, so that some are held and some are missed. */
const windowAbout = (mean: number, random: Random) => {
  const half = random.choice([1, 1.5, 2, 2, 3]);
  const middle = mean + random.normal(0, half / 2);
  return {
    culture: "window",
    name: "",
    ceiling: null,
    share: fraction(0.95),
    low: edge(middle - half),
    high: edge(middle + half),
    hours: hours(random.choice([8, 12, 24, 36])),
  };
};

const judged = async (lines: readonly string[], requirement: ReturnType<typeof windowAbout>) => {
  const piped = { probes: ["Jar"], unit: null, usualUnit: "degC" as const, firstDay: null };
  const log = pipedReadings(lines.join("\n"), { ...piped, now: morning });
  if (!log.ok) throw new Error(problemText(log.problem));
  const source = { ...sourceOf(encode(typedCsv(log.value), "utf-8")), sha256: () => "" };
  const analysis = await analyse(
    {
      version: "0",
      room: null,
      runToRun: 0,
      share: 0.95,
      confidence: 0.95,
      shownUnit: "degC",
      reading: {},
      requirements: [requirement],
      thermometer: specifiedThermometer(celsiusDifference(byHand), "stated"),
    },
    [source],
  );
  if (!analysis.ok) throw new Error(problemText(analysis.problem));
  return analysis.value.probes[0]!;
};

interface Judged {
  readonly probe: ProbeAnalysis;
  readonly mean: number;
  readonly holds: boolean;
}

const all: Judged[] = [];

beforeAll(async () => {
  for (let seed = 1; all.length < cases; seed += 1) {
    const night = nightOf(seed);
    if (night === null) continue;
    const mean = trueMean(night);
    const requirement = windowAbout(mean, night.random);
    // oxlint-disable-next-line no-await-in-loop -- one night after the other
    const probe = await judged(typedLines(night), requirement);
    const { holds } = verdictTruth(night.world.run, night.start, requirement);
    all.push({ probe, mean, holds });
  }
}, 120_000);

const verdictOf = ({ probe }: Judged) => probe.verdicts[0]!;

describe("eight readings by hand over a night", () => {
  it("find the hold, and its mean within 0.4 degC, in nine cases of ten", () => {
    const found = all.filter(({ probe }) => probe.night.hold !== null);
    const near = found.filter(
      ({ probe, mean }) => Math.abs((probe.night.hold?.mean ?? Infinity) - mean) <= 0.4,
    );
    expect(found.length).toBeGreaterThanOrEqual(0.9 * cases);
    expect(near.length).toBeGreaterThanOrEqual(0.9 * cases);
  });

  it("give an answer often enough to be worth the night", () => {
    const decided = all.filter((one) => verdictOf(one).verdict !== "unproven");
    expect(decided.length).toBeGreaterThanOrEqual(0.3 * cases);
  });

  it("say holds or misses only with reason, and are seldom wrong", () => {
    const decided = all.filter((one) => verdictOf(one).verdict !== "unproven");
    // Both words are said from 95 % on: of some thirty, one or two may be wrong.
    const wrong = decided.filter((one) => (verdictOf(one).verdict === "holds") !== one.holds);
    expect(wrong.length).toBeLessThanOrEqual(0.05 * decided.length + 1);
    for (const one of all) expect(verdictOf(one).reasons.length).toBeGreaterThan(0);
    for (const { probe } of decided.filter((one) => verdictOf(one).verdict === "holds")) {
      expect(probe.night.hold?.hours).toBeGreaterThanOrEqual(3);
      expect(
        probe.series.minutes.filter((at) => at >= probe.night.hold!.fromMinute).length,
      ).toBeGreaterThanOrEqual(6);
    }
  });
});
