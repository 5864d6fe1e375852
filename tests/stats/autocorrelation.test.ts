import { describe, expect, it } from "vitest";
import {
  autocorrelations,
  effectiveSampleSize,
  integratedAutocorrelationTime,
} from "../../src/stats/autocorrelation.ts";
import { standardDeviation } from "../../src/stats/summary.ts";
import { autoregressive, seededNormal } from "./seeded-noise.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { allLags } from "../reference/values/all-lags.ts";
import { univariate } from "../reference/values/univariate.ts";

describeReferences(univariate);
describeReferences(allLags);

describe("autocorrelations", () => {
  // Short requests are summed directly, long ones transformed piece by piece:
  // two independent computations of the same numbers.
  it("gives the same by transforms as by sums", () => {
    const series = autoregressive(3001, 0.9, seededNormal(3));
    const direct = autocorrelations(series, 64);
    for (const lags of [65, 700, 3000]) {
      const transformed = autocorrelations(series, lags);
      expect(transformed).toHaveLength(lags + 1);
      direct.forEach((value, lag) => expect(transformed[lag]).toBeCloseTo(value, 11));
    }
    const last = autocorrelations(series, 3000)[3000]!;
    const n = series.length;
    const centre = series.reduce((sum, value) => sum + value, 0) / n;
    const squares = standardDeviation(series) ** 2 * (n - 1);
    expect(last).toBeCloseTo(((series[0]! - centre) * (series[n - 1]! - centre)) / squares, 11);
  });

  it("ends at the last lag there is, and says NaN where nothing varies", () => {
    expect(autocorrelations([2, 4, 4, 7, 1, 3, 8, 8, 5, 2], 99)).toHaveLength(10);
    expect([...autocorrelations([4, 4, 4], 2)]).toEqual([1, NaN, NaN]);
    expect(autocorrelations([], 3)).toHaveLength(0);
  });
});

describe("integratedAutocorrelationTime", () => {
  // By theory (1 + r)/(1 - r) for a first-order autoregressive series; the
  // estimate's relative standard deviation is about sqrt(4 * 2 tau / n)
  // (Sokal 1997), 3 % to 11 % here, four of which are allowed.
  it.each([
    [0.5, 20_000],
    [0.9, 50_000],
    [0.99, 200_000],
  ])("of an autoregressive series with r = %f", (r, n) => {
    const tau = (1 + r) / (1 - r);
    const found = integratedAutocorrelationTime(autoregressive(n, r, seededNormal(5)));
    expect(Math.abs(found / tau - 1)).toBeLessThan(4 * Math.sqrt((8 * tau) / n));
  });

  it("is about 1 for independent readings", () => {
    const normal = seededNormal(8);
    const series = Float64Array.from({ length: 20_000 }, () => normal());
    expect(Math.abs(integratedAutocorrelationTime(series) - 1)).toBeLessThan(0.1);
  });

  it("is 1 where nothing varies", () => {
    expect(integratedAutocorrelationTime([40, 40, 40, 40])).toBe(1);
    expect(integratedAutocorrelationTime([40])).toBe(1);
  });
});

describe("effectiveSampleSize", () => {
  it("is never more than the readings nor less than one", () => {
    expect(effectiveSampleSize([1, 2, 1, 2, 1, 2, 1, 2])).toBe(8);
    expect(effectiveSampleSize(Array.from({ length: 50 }, (_, i) => i))).toBeGreaterThanOrEqual(1);
    expect(effectiveSampleSize([40])).toBe(1);
    expect(effectiveSampleSize([])).toBe(0);
  });

  // Constructed: the standard error of the mean that it implies against the
  // spread of 400 means of such series; 3.5 % standard error on the latter,
  // and tau is estimated low by a few per cent on 600 readings.
  it("gives the standard error that means really have", () => {
    const normal = seededNormal(13);
    const means: number[] = [];
    let claimed = 0;
    for (let run = 0; run < 400; run++) {
      const series = autoregressive(600, 0.8, normal);
      means.push(series.reduce((sum, value) => sum + value, 0) / 600);
      claimed += standardDeviation(series) ** 2 / effectiveSampleSize(series) / 400;
    }
    const ratio = Math.sqrt(claimed) / standardDeviation(means);
    expect(ratio).toBeGreaterThan(0.85);
    expect(ratio).toBeLessThan(1.15);
  });
});
