import { describe, expect, it } from "vitest";
import { coverage, deciles, verdictFigures } from "./figures.ts";
import { groups } from "./groups.ts";
import type { NightRecord, StudyRecord } from "./record.ts";
import { studyReport } from "./report.ts";

/** Constructed: held 39 to 41 from minute 60 to 600, found 0.1 degC too high with an uncertainty of 0.1. */
const night = (change: Partial<NonNullable<NightRecord["found"]>> = {}): NightRecord => ({
  hours: 10,
  found: {
    start: 70,
    end: 600,
    hours: 9,
    mean: 40.1,
    band: { low: 39.1, high: 41.1 },
    guarded: { low: 38.9, high: 41.3 },
    standardUncertainty: 0.1,
    drift: { perHour: 0, low: -0.1, high: 0.1 },
    swing: null,
    ...change,
  },
  truth: {
    start: 60,
    end: 600,
    endLeftRange: 640,
    mean: 40,
    band: { low: 39, high: 41 },
    sameHours: { mean: 40.25, band: { low: 39.2, high: 41.3 } },
    drift: 0.05,
  },
  room: { low: 18, high: 20 },
  events: [],
});

const record = (
  holds: boolean,
  verdict: "holds" | "misses" | "unproven",
  probability: number,
  change: Partial<StudyRecord> = {},
): StudyRecord => ({
  seed: 1,
  promise: "this run",
  tests: 1,
  room: "stated",
  thermometer: "specified",
  saysThermostat: true,
  runScatter: 0,
  kind: "cooker",
  structure: "lumped",
  bodies: "lumped",
  container: "jar",
  control: "hysteresis",
  testHours: 10,
  byHand: false,
  switchesOff: false,
  requirement: { low: 38, high: 42, ceiling: null, hours: 24 },
  nights: [night()],
  truth: {
    holds,
    insideShare: 1,
    highest: 41,
    lowest: 39,
    mean: 40,
    room: { low: 18, high: 20 },
    asTested: { mean: 40.5, band: { low: 39.5, high: 41.5 } },
  },
  problem: null,
  answer: { verdict, probability, ceilingRisk: null, reasons: [], uncertainty: {} },
  ...change,
});

const some = [
  record(true, "holds", 0.96),
  record(false, "holds", 0.98, { kind: "warming box", testHours: 4 }),
  record(true, "misses", 0.03),
  record(false, "unproven", 0.4, { problem: null }),
  record(false, "unproven", 0, { answer: null, problem: "no-time-column" }),
];

describe("verdictFigures", () => {
  it("counts wrong answers among each word, unanswered cases apart", () => {
    const { cases, falseHolds, falseMisses, unproven, told, held } = verdictFigures(some);
    expect(cases).toBe(5);
    expect(falseHolds).toEqual({ met: 1, of: 2 });
    expect(falseMisses).toEqual({ met: 1, of: 1 });
    expect(unproven).toEqual({ met: 1, of: 4 });
    expect(told).toBeCloseTo((0.96 + 0.98 + 0.03 + 0.4) / 4, 12);
    expect(held).toEqual({ met: 2, of: 4 });
  });
});

describe("deciles", () => {
  it("sets what was told beside what came true, a certainty in the last", () => {
    const [first] = deciles(some);
    const last = deciles([...some, record(true, "holds", 1)])[9]!;
    expect(first).toEqual({ from: 0, told: 0.03, held: { met: 1, of: 1 } });
    expect(last.told).toBeCloseTo((0.96 + 0.98 + 1) / 3, 12);
    expect(last.held).toEqual({ met: 2, of: 3 });
  });
});

describe("coverage", () => {
  it("takes 15 min as near enough, and the ends of intervals as in", () => {
    const found = coverage([record(true, "holds", 1)]);
    for (const share of [found.mean, found.band, found.drift, found.start, found.end])
      expect(share).toEqual({ met: 1, of: 1 });
    expect(found.nextMean.of).toBe(0);
    // Over the hours found, 40.25 against 40.1 is 1.5 uncertainties off; the band's end is just in.
    expect([found.sameMean.met, found.sameBand.met]).toEqual([1, 1]);
  });

  it("counts what lies outside", () => {
    const off = night({ start: 76, end: 656, mean: 40.2, guarded: { low: 39.01, high: 42 } });
    const found = coverage([record(true, "holds", 1, { nights: [off] })]);
    for (const share of [found.mean, found.band, found.start, found.end])
      expect(share).toEqual({ met: 0, of: 1 });
  });

  it("holds one test against the next run, and a hold not found against the start", () => {
    const next = record(true, "holds", 1, { promise: "next run" });
    // 40.5 is 0.4 away, four standard uncertainties; the band's 41.5 is above 41.3.
    expect(coverage([next])).toMatchObject({
      mean: { met: 0, of: 0 },
      nextMean: { met: 0, of: 1 },
      nextBand: { met: 0, of: 1 },
    });
    const unfound = record(true, "unproven", 0.5, { nights: [{ ...night(), found: null }] });
    expect(coverage([unfound]).start).toEqual({ met: 0, of: 1 });
  });
});

describe("groups", () => {
  it("puts every record into one group of each kind", () => {
    const counts = new Map<string, number>();
    for (const { by, records } of groups(some))
      counts.set(by, (counts.get(by) ?? 0) + records.length);
    expect(new Set(counts.values())).toEqual(new Set([5]));
  });
});

describe("studyReport", () => {
  it("says the rates with their counts", () => {
    const text = studyReport(some, 1);
    expect(text).toContain("5 simulated cases, seeds 1 to 5; 1 of them without an answer");
    // 1 of 2 by the score interval: 0.5 -+ 0.4055 (Wilson 1927).
    expect(text).toContain("50.0 % (9.5..90.5; 1/2)");
    expect(text).toContain("| 0.0..0.1 | 1 | 0.030 | 1.000 |");
  });
});
