import { describe, expect, it } from "vitest";
import { fitLine } from "../../src/stats/line-fit.ts";
import { slopeUncertaintyAutocorrelated } from "../../src/stats/robust-slope-uncertainty.ts";
import { standardDeviation } from "../../src/stats/summary.ts";
import { autoregressive, seededNormal } from "./seeded-noise.ts";

/** Mean claimed standard errors over the true one, and how often two of them cover the truth. */
const trial = (n: number, runs: number, noise: () => Float64Array) => {
  const x = Float64Array.from({ length: n }, (_, i) => i);
  const slopes: number[] = [];
  let robust = 0;
  let plain = 0;
  let covered = 0;
  for (let run = 0; run < runs; run++) {
    const y = noise();
    const fit = fitLine(x, y);
    const claimed = slopeUncertaintyAutocorrelated(x, y, fit);
    slopes.push(fit.slope);
    robust += claimed / runs;
    plain += fit.slopeUncertainty / runs;
    if (Math.abs(fit.slope) < 2 * claimed) covered += 1 / runs;
  }
  const truth = standardDeviation(slopes);
  return { robust: robust / truth, plain: plain / truth, covered };
};

describe("slopeUncertaintyAutocorrelated", () => {
  // Constructed series; the sandwich (X'X)^-1 S (X'X)^-1 n/(n-2) of Newey & West
  // 1987 in full matrix form with NumPy 2.4.6.
  it.each([
    [0, 0.031647536717575975],
    [1, 0.02949215410063869],
    [3, 0.027080555184220124],
    [5, 0.02409100663601213],
  ])("agrees with the matrix form at lag %i", (lag, expected) => {
    const x = Array.from({ length: 24 }, (_, i) => i * 0.5);
    const y = x.map((t, i) => {
      const wave = 0.3 * ((i * 7) % 5) - 0.6 + 0.4 * Math.sin(i / 2);
      return 10 + 0.2 * t + wave;
    });
    expect(slopeUncertaintyAutocorrelated(x, y, fitLine(x, y), lag)).toBeCloseTo(expected, 12);
  });

  // Constructed: 400 series each, true slope 0. The mean claimed error against the spread the
  // slopes really have (known to 3.5 %) may be off by a fifth, and two claimed
  // errors should cover the truth in 95 %: 84 % and more is what errors of this kind reach
  // at such correlation (Andrews & Monahan 1992, tables), 3 binomial deviations (5 %) below.
  it("comes near the spread slopes really have, where the plain formula fails", () => {
    const normal = seededNormal(21);
    const found = trial(400, 400, () => autoregressive(400, 0.8, normal));
    expect(Math.abs(found.robust - 1)).toBeLessThan(0.2);
    expect(found.covered).toBeGreaterThan(0.84);
    // By theory sqrt((1 - r)/(1 + r)) = 0.33.
    expect(found.plain).toBeLessThan(0.4);
  });

  it("sees slow correlation under reading-to-reading noise", () => {
    const normal = seededNormal(22);
    const found = trial(6000, 400, () =>
      autoregressive(6000, 0.995, normal).map((value) => value + 2 * normal()),
    );
    expect(Math.abs(found.robust - 1)).toBeLessThan(0.2);
    expect(found.covered).toBeGreaterThan(0.79);
    expect(found.plain).toBeLessThan(0.15);
  });

  it("agrees with the plain formula on independent noise", () => {
    const normal = seededNormal(23);
    const found = trial(200, 400, () => Float64Array.from({ length: 200 }, () => normal()));
    expect(Math.abs(found.robust - 1)).toBeLessThan(0.1);
    expect(found.covered).toBeGreaterThan(0.92);
  });

  it("is NaN where there is no slope to doubt", () => {
    expect(slopeUncertaintyAutocorrelated([1, 2], [3, 4], fitLine([1, 2], [3, 4]))).toBeNaN();
    const flat = fitLine([1, 1, 1], [3, 4, 5]);
    expect(slopeUncertaintyAutocorrelated([1, 1, 1], [3, 4, 5], flat)).toBeNaN();
  });
});
