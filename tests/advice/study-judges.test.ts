import { describe, expect, it } from "vitest";
import type { ApplianceAdvice } from "../../src/advice/advice-types.ts";
import { normalQuantile } from "../../src/stats/normal.ts";
import { createRandom } from "../simulator/random.ts";
import { sampleRespondingCase, type RespondingCase } from "../simulator/responding-case.ts";
import {
  answerShares,
  calibration,
  coverage,
  gapOf,
  recommendation,
  thermometerGapOf,
} from "./study-judges.ts";
import { levelRecords } from "./study-levels.ts";
import type { AnswerRecord, LevelRecord } from "./study-record.ts";
import { studyText } from "./study-table.ts";

const level = (place: number, inside = true): LevelRecord => ({
  setUp: "38 degC, jars",
  basis: "tested",
  mean: 38,
  standardUncertainty: 0.3,
  place,
  inside,
  fresh: 38.1,
});

const answer = (more: Partial<AnswerRecord>): AnswerRecord => ({
  culture: "first",
  answer: "can",
  change: "none",
  setUp: "38 degC, jars",
  basis: "tested",
  obstacles: [],
  said: 0.97,
  trueProbability: 0.9,
  trueShare: 0.9,
  bestShare: 0.92,
  bestSetUp: "38.5 degC, jars",
  bestSettingTested: true,
  bestProbability: 0.95,
  shareByThermometer: 0.8,
  candidates: [],
  ...more,
});

/** Advice that knows each set-up's long-run mean and how its runs scatter, from 800 of them. */
const knowingAdvice = ({
  truth,
  containers,
  appliance,
  cultures,
  seed,
}: RespondingCase): ApplianceAdvice => {
  const { hours } = cultures[0]!;
  const random = createRandom(seed, "knowing");
  return {
    appliance: "tried",
    tests: [],
    terms: [],
    scatter: { prior: 0.2, now: 0.2 },
    cultures: [],
    candidates: [],
    curves: containers.map(({ container: { id: container } }) => ({
      container,
      points: appliance.response.settings.slice(0, 5).map((setting) => {
        const setUp = { appliance: "tried", setting, container };
        const runs = Array.from({ length: 800 }, () => truth.freshHoldMean(random, setUp, hours));
        const mean = runs.reduce((sum, value) => sum + value, 0) / runs.length;
        const square = runs.reduce((sum, value) => sum + (value - mean) ** 2, 0) / runs.length;
        const standardUncertainty = Math.sqrt(square);
        const half = normalQuantile(0.975) * standardUncertainty;
        return {
          setting,
          basis: "tested" as const,
          level: {
            mean,
            standardUncertainty,
            degreesOfFreedom: 1e6,
            low: mean - half,
            high: mean + half,
          },
        };
      }),
    })),
  };
};

describe("coverage", () => {
  it("counts places by how far they are from the middle", () => {
    const places = [0.02, 0.06, 0.2, 0.3, 0.5, 0.7, 0.74, 0.8, 0.93, 0.99];
    const found = coverage(places.map((place) => level(place, place !== 0.99)));
    expect(found.at50).toEqual({ met: 4, of: 10 });
    expect(found.at80).toEqual({ met: 6, of: 10 });
    expect(found.at95).toEqual({ met: 8, of: 10 });
    expect(found.said).toEqual({ met: 9, of: 10 });
    expect(found.bias).toBeCloseTo(0.1, 12);
  });

  it("is as stated for advice that knows each set-up's mean and scatter", () => {
    // Constructed: thermostatted appliances, where a run's own shift outweighs the room, so nearly normal.
    const cases = Array.from({ length: 50 }, (_, index) =>
      sampleRespondingCase(7001 + index),
    ).filter(({ appliance }) => appliance.thermostatted && appliance.runDeviation > 0.12);
    const records = cases.flatMap((one) =>
      levelRecords(createRandom(one.seed, "draws"), one, knowingAdvice(one)),
    );
    expect(records.length).toBeGreaterThan(300);
    // Three standard errors of a binomial share: sqrt(p (1 - p) / n), n > 300.
    const { at50, at95, said } = coverage(records);
    expect(Math.abs(at50.met / at50.of - 0.5)).toBeLessThan(0.087);
    expect(Math.abs(at95.met / at95.of - 0.95)).toBeLessThan(0.038);
    expect(said).toEqual(at95);
  });
});

describe("recommendation", () => {
  it("counts the share lost, and what the thermometer alone would lose", () => {
    const far = answer({ trueShare: 0.4, shareByThermometer: 0.9 });
    const hopeless = answer({ trueShare: 0, bestShare: 0.04, shareByThermometer: 0 });
    expect(gapOf(far)).toBeCloseTo(0.52, 12);
    expect(thermometerGapOf(far)).toBeCloseTo(0.02, 12);
    const found = recommendation([answer({}), far, hopeless]);
    expect(found.close).toEqual({ met: 2, of: 3 });
    expect(found.closeWhereServed).toEqual({ met: 1, of: 2 });
    expect(found.closeByThermometer).toEqual({ met: 2, of: 3 });
    expect(found.meanGap).toBeCloseTo((0.02 + 0.52 + 0.04) / 3, 12);
  });
});

describe("answerShares", () => {
  it("tells wrong answers by what is true of them", () => {
    const all = [
      answer({}),
      answer({ trueProbability: 0.3 }),
      answer({ answer: "cannot" }),
      answer({ answer: "cannot", bestProbability: 0.2 }),
      answer({ answer: "may", trueProbability: 0.1 }),
    ];
    const found = answerShares(all);
    expect(found).toMatchObject({ can: 2, may: 1, cannot: 2, unknown: 0 });
    expect(found.wrongCan).toEqual({ met: 1, of: 2 });
    expect(found.canFails).toBeCloseTo((0.1 + 0.7) / 2, 12);
    expect(found.wrongCannot).toEqual({ met: 1, of: 2 });
    expect(found.foundCan).toEqual({ met: 2, of: 4 });
    expect(found.foundMay).toEqual({ met: 3, of: 4 });
  });
});

describe("calibration", () => {
  it("puts each chance into its decile, certainty into the last", () => {
    const said = [0, 0.09, 0.1, 0.95, 1];
    const found = calibration(said.map((one) => ({ said: one, trueProbability: one / 2 })));
    expect(found.map(({ count }) => count)).toEqual([2, 1, 0, 0, 0, 0, 0, 0, 0, 2]);
    expect(found[9]!.said).toBeCloseTo(0.975, 12);
    expect(found[9]!.true).toBeCloseTo(0.4875, 12);
  });
});

describe("studyText", () => {
  it("prints what was judged", () => {
    const text = studyText(
      [
        {
          seed: 5,
          kind: "cooker",
          control: "steps",
          thermostatted: true,
          checked: true,
          roomStated: true,
          tests: 2,
          usedTests: 2,
          levels: [level(0.4)],
          answers: [answer({ trueProbability: 0.2 })],
          milliseconds: 10,
        },
      ],
      3,
    );
    expect(text).toContain("wrong can: 1");
    expect(text).toContain("  5 first steps");
    expect(text).not.toContain("NaN");
  });
});
