import { describe, expect, it } from "vitest";
import { fitLine } from "../../src/stats/line-fit.ts";
import { slopeUncertaintyAutocorrelated } from "../../src/stats/robust-slope-uncertainty.ts";
import { standardDeviation } from "../../src/stats/summary.ts";
import { autoregressive, seededNormal } from "./seeded-noise.ts";

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

  const claimedOverTrue = (n: number, runs: number, noise: () => Float64Array) => {
    const x = Float64Array.from({ length: n }, (_, i) => i);
    const slopes: number[] = [];
    let robust = 0;
    let plain = 0;
    for (let run = 0; run < runs; run++) {
      const y = noise();
      const fit = fitLine(x, y);
      slopes.push(fit.slope);
      robust += slopeUncertaintyAutocorrelated(x, y, fit) ** 2 / runs;
      plain += fit.slopeUncertainty ** 2 / runs;
    }
    const truth = standardDeviation(slopes);
    return { robust: Math.sqrt(robust) / truth, plain: Math.sqrt(plain) / truth };
  };

  // Constructed: 400 series each; the true spread is known to 3.5 %. The plain
  // formula is too small by sqrt((1 + r)/(1 - r)). Such robust errors are known to
  // come out some 10 to 25 % low (Andrews 1991, tables).
  it("comes near the spread slopes really have, where the plain formula fails", () => {
    const normal = seededNormal(21);
    const { robust, plain } = claimedOverTrue(400, 400, () => autoregressive(400, 0.8, normal));
    expect(robust).toBeGreaterThan(0.8);
    expect(robust).toBeLessThan(1.1);
    expect(plain).toBeLessThan(0.45);
  });

  it("sees slow correlation under reading-to-reading noise", () => {
    const normal = seededNormal(22);
    const { robust, plain } = claimedOverTrue(6000, 300, () =>
      autoregressive(6000, 0.995, normal).map((value) => value + 2 * normal()),
    );
    expect(robust).toBeGreaterThan(0.75);
    expect(robust).toBeLessThan(1.15);
    expect(plain).toBeLessThan(0.2);
  });

  it("agrees with the plain formula on independent noise", () => {
    const normal = seededNormal(23);
    const { robust } = claimedOverTrue(200, 300, () =>
      Float64Array.from({ length: 200 }, () => normal()),
    );
    expect(robust).toBeGreaterThan(0.85);
    expect(robust).toBeLessThan(1.15);
  });

  it("is NaN where there is no slope to doubt", () => {
    expect(slopeUncertaintyAutocorrelated([1, 2], [3, 4], fitLine([1, 2], [3, 4]))).toBeNaN();
    const flat = fitLine([1, 1, 1], [3, 4, 5]);
    expect(slopeUncertaintyAutocorrelated([1, 1, 1], [3, 4, 5], flat)).toBeNaN();
  });
});
