import { describe, expect, it } from "vitest";
import { summarise } from "./score-summary.ts";
import type { Answer, CaseScore } from "./score-types.ts";

const answer = (change: Partial<Answer> = {}): Answer => ({
  startMinute: 100,
  endMinute: 600,
  band: { low: 39, high: 41 },
  verdict: "holds",
  probability: 0.97,
  ...change,
});

/** A case whose truth is: hold from 100 to 600 min, 38.8..40.8 degC, read 0.2 degC too high. */
const scored = (
  holds: boolean,
  found: Answer | null,
  change: Partial<CaseScore> = {},
): CaseScore => ({
  seed: 1,
  dialectSeed: 1,
  dialect: "",
  dialectOptions: [],
  description: "",
  kind: "cooker",
  structure: "lumped",
  testHours: 10,
  byHand: false,
  roomStated: false,
  events: [],
  errorLeft: 0.2,
  truth: {
    starts: { start: 100, startFirstEntry: 90, startWithinHalfDegree: 100, startOwnRange: null },
    endMinute: 600,
    endLeftRangeMinute: 640,
    band: { low: 38.8, high: 40.8 },
    holds,
  },
  fault: null,
  answer: found,
  ...change,
});

describe("summarise", () => {
  it("counts wrong answers among each word", () => {
    const { verdicts } = summarise([
      scored(true, answer()),
      scored(false, answer()),
      scored(true, answer()),
      scored(true, answer({ verdict: "misses", probability: 0.02 })),
      scored(false, answer({ verdict: "unproven", probability: 0.5 })),
    ]);
    expect(verdicts.falseHolds).toEqual({ met: 1, of: 3 });
    expect(verdicts.falseMisses).toEqual({ met: 1, of: 1 });
    expect(verdicts.unproven).toEqual({ met: 1, of: 5 });
  });

  it("takes 15 min as near enough and no hold as missed", () => {
    const summary = summarise([
      scored(true, answer({ startMinute: 115, endMinute: 616 })),
      scored(true, answer({ startMinute: 84 })),
      scored(true, answer({ startMinute: null, endMinute: null, band: null })),
      scored(true, answer({ startMinute: 500 }), { byHand: true }),
    ]);
    expect(summary.start.start).toEqual({ met: 1, of: 3 });
    expect(summary.start.startFirstEntry).toEqual({ met: 1, of: 3 });
    expect(summary.start.startOwnRange.of).toBe(0);
    expect(summary.startByHand).toEqual({ met: 0, of: 1 });
    expect(summary.end).toEqual({ met: 1, of: 3 });
    expect(summary.endOrLeftRange).toEqual({ met: 2, of: 3 });
  });

  it("takes the thermometer's error out of the band", () => {
    const { bandError } = summarise([scored(true, answer({ band: { low: 39.1, high: 41 } }))]);
    expect(bandError.count).toBe(2);
    expect(bandError.ninetieth).toBeCloseTo(0, 12);
    expect(
      summarise([scored(true, answer({ band: { low: 39.1, high: 41.3 } }))]).bandError.median,
    ).toBeCloseTo(0.1, 12);
  });

  it("sets probability beside truth by decile", () => {
    const { reliability, brierScore } = summarise([
      scored(true, answer({ probability: 1 })),
      scored(false, answer({ probability: 0.92 })),
      scored(false, answer({ probability: 0.1, verdict: "unproven" })),
    ]);
    expect(reliability[9]).toEqual({ from: 0.9, count: 2, meanProbability: 0.96, trueShare: 0.5 });
    expect(reliability[1]?.count).toBe(1);
    expect(brierScore).toBeCloseTo((0.92 ** 2 + 0.1 ** 2) / 3, 12);
  });

  it("keeps files that leave something open apart, and those not read out of the verdicts", () => {
    const summary = summarise([
      scored(true, null, { fault: { kind: "problem", code: "no-time-column" } }),
      scored(true, answer(), { dialectOptions: ["--unit", "F"] }),
      scored(true, answer()),
    ]);
    expect(summary.readWithoutOptions).toEqual({ met: 1, of: 2 });
    expect(summary.readWithTheirOptions).toEqual({ met: 1, of: 1 });
    expect(summary.verdicts.falseHolds.of).toBe(2);
  });

  it("splits by what the case was", () => {
    const { splits } = summarise([
      scored(true, answer(), { events: ["power-cut", "power-cut"] }),
      scored(false, answer(), { kind: "warming box", testHours: 4 }),
    ]);
    const one = (by: string, value: string) =>
      splits.find((part) => part.by === by && part.value === value);
    expect(one("appliance", "warming box")?.verdicts.falseHolds).toEqual({ met: 1, of: 1 });
    expect(one("event", "power-cut")?.cases).toBe(1);
    expect(one("test length", "3..7 h")?.cases).toBe(1);
  });
});
