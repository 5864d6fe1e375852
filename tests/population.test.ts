import { describe, expect, it } from "vitest";
import { scoreCase } from "./simulator/score-case.ts";
import { summarise, type Share } from "./simulator/score-summary.ts";

/**
 * The whole way, from the bytes of a logger's file to the verdict, on
 * simulated water tests that carry their truth (simulator/population.ts). The
 * simulator knows nothing of the analysis. The seeds were never looked at
 * while the analysis was built.
 */
const cases = 120;
const firstSeed = 880_001;
const scores = await Promise.all(
  Array.from({ length: cases }, (_, index) => scoreCase(firstSeed + index, undefined, false)),
);
const summary = summarise(scores);

/** Most events in n trials that a rate of p still gives in 99 of 100 such runs (binomial distribution). */
const mostAt = (p: number, n: number): number => {
  let term = (1 - p) ** n;
  let sum = term;
  let count = 0;
  while (sum < 0.99) {
    term *= ((n - count) / (count + 1)) * (p / (1 - p));
    count += 1;
    sum += term;
  }
  return count;
};
const most = ({ of }: Share, p: number): number => mostAt(p, of);

describe("simulated water tests, from file to verdict", () => {
  it("reads every dialect that leaves nothing open without options, and the others with theirs", () => {
    const { readWithoutOptions, readWithTheirOptions } = summary;
    expect(readWithoutOptions.of).toBeGreaterThan(cases / 2);
    expect(readWithoutOptions.met).toBe(readWithoutOptions.of);
    expect(readWithTheirOptions.met).toBe(readWithTheirOptions.of);
  });

  it("is wrong in no more of its verdicts than a rate of 4 % allows", () => {
    const { falseHolds, falseMisses } = summary.verdicts;
    expect(falseHolds.of).toBeGreaterThan(cases / 8);
    expect(falseHolds.met).toBeLessThanOrEqual(most(falseHolds, 0.04));
    expect(falseMisses.met).toBeLessThanOrEqual(most(falseMisses, 0.04));
  });

  it("leaves no more unproven than a share of 40 % allows", () => {
    const { unproven } = summary.verdicts;
    expect(unproven.met).toBeLessThanOrEqual(most(unproven, 0.4));
  });

  it("finds the end of the hold within 15 min in no fewer than a share of 95 % allows", () => {
    const { of, met } = summary.endOrLeftRange;
    expect(of - met).toBeLessThanOrEqual(mostAt(0.05, of));
  });

  it("finds the band's edges within 0.1 degC in half of the tests, the thermometer's error aside", () => {
    expect(summary.bandError.median).toBeLessThan(0.1);
  });
});
