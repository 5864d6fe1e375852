import { describe, expect, it } from "vitest";
import { assumedRunToRun, futureRun, runScatter } from "../../src/culture/run-to-run.ts";
import { seededNormal } from "../stats/seeded-noise.ts";

describe("runScatter", () => {
  it("is the assumption where nothing was repeated: two runs then differ by 0.3 degC", () => {
    for (const setUps of [[], [[38.2]], [[38.2], [41], []]]) {
      expect(runScatter(setUps).repeats).toBe(0);
      expect(runScatter(setUps).deviation * Math.SQRT2).toBeCloseTo(0.3, 12);
    }
  });

  it("pools the variances within set-ups and shrinks them, as worked by hand", () => {
    // Set-up one: 38.0, 38.4, 38.2: squares about 38.2 are 0.04 + 0.04 + 0 = 0.08, two repeats.
    // Set-up two: 41.0, 41.6: squares about 41.3 are 0.09 + 0.09 = 0.18, one repeat.
    // (2 x 0.045 + 0.08 + 0.18) / (2 + 3) = 0.35 / 5 = 0.07.
    const found = runScatter([[38, 38.4, 38.2], [41, 41.6], [45]]);
    expect(found.repeats).toBe(3);
    expect(found.deviation ** 2).toBeCloseTo(0.07, 12);
  });

  it("does not see how far set-ups lie apart", () => {
    const near = runScatter([
      [38, 38.4],
      [38.1, 38.2],
    ]);
    const far = runScatter([
      [38, 38.4],
      [58.1, 58.2],
    ]);
    expect(far.deviation).toBeCloseTo(near.deviation, 12);
  });
});

describe("futureRun", () => {
  it("is exactly the assumed figure for one test without repeats", () => {
    expect(futureRun(runScatter([[38]]), 1)).toEqual({ value: assumedRunToRun, from: "assumed" });
  });

  it("grows by sqrt(1 + 1/n) on the scatter, and says how many repeats it rests on", () => {
    // By hand as above: variance 0.07; three tests: 0.07 x 4/3 = 0.09333.
    const found = futureRun(runScatter([[38, 38.4, 38.2], [41, 41.6], [45]]), 3);
    expect(found.value ** 2).toBeCloseTo(0.0933333, 6);
    expect(found).toMatchObject({ from: "measured", repeats: 3 });
  });

  it("lets the repeats of one set-up speak for a single test of another on the same appliance", () => {
    expect(futureRun({ deviation: 0.2, repeats: 4 }, 1)).toEqual({
      value: 0.2 * Math.SQRT2,
      from: "measured",
      repeats: 4,
    });
  });
});

/** Share of future runs inside mean +- 1.96 u, for normal runs of a known true deviation. */
const coverage = (trueDeviation: number, tests: number, otherSetUps = 0): number => {
  const normal = seededNormal(1000 * trueDeviation + 10 * tests + otherSetUps);
  const runs = (count: number) => Array.from({ length: count }, () => trueDeviation * normal());
  const trials = 20_000;
  let inside = 0;
  for (let trial = 0; trial < trials; trial += 1) {
    const own = runs(tests);
    const others = Array.from({ length: otherSetUps }, () => runs(tests));
    const { value } = futureRun(runScatter([own, ...others]), tests);
    const centre = own.reduce((sum, one) => sum + one, 0) / tests;
    if (Math.abs(trueDeviation * normal() - centre) <= 1.96 * value) inside += 1;
  }
  return inside / trials;
};

/**
 * Monte Carlo; 20,000 trials give a standard error of at most 0.003 at these
 * shares. The interval is a normal one about a shrunk figure, so it is right
 * near the assumed deviation, too wide where an appliance repeats better and
 * too narrow where it repeats much worse: those are limits, stated here.
 */
describe("the predictive interval", () => {
  it.each([2, 3, 4, 5])("covers about 93 %% at a true deviation of 0.2, %d tests", (tests) => {
    // 0.92: the measured shares lie between 0.931 and 0.944, three standard errors below that.
    expect(coverage(0.2, tests)).toBeGreaterThan(0.92);
    expect(coverage(0.2, tests)).toBeLessThan(0.97);
  });

  it.each([2, 3, 4, 5])("covers more at a true deviation of 0.1, %d tests", (tests) => {
    expect(coverage(0.1, tests)).toBeGreaterThan(0.98);
  });

  it("covers too little at a true deviation of 0.4, less so with every repeat", () => {
    const shares = [2, 3, 4, 5].map((tests) => coverage(0.4, tests));
    expect(shares.toSorted((a, b) => a - b)).toEqual(shares);
    expect(shares[0]).toBeGreaterThan(0.75);
    expect(shares[3]).toBeLessThan(0.9);
    // Ten repeats, five set-ups of three tests: the data outweigh the assumption.
    expect(coverage(0.4, 3, 4)).toBeGreaterThan(0.9);
  });
});
