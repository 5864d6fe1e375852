import { describe, expect, it } from "vitest";
import {
  autocorrelations,
  effectiveSampleSize,
  integratedAutocorrelationTime,
} from "../../src/stats/autocorrelation.ts";
import { standardDeviation } from "../../src/stats/summary.ts";
import { correctDigits } from "./correct-digits.ts";
import * as nist from "./nist-data.ts";
import { autoregressive, seededNormal } from "./seeded-noise.ts";

describe("autocorrelations", () => {
  // NIST StRD, Univariate Summary Statistics: certified lag-one autocorrelations. Nine digits, the
  // rule for certified univariate values.
  it.each([
    ["Lew", nist.lew, -0.307304800605679],
    ["Lottery", nist.lottery, -0.120948622967393],
    ["Mavro", nist.mavro, 0.937989183438248],
    ["Michelso", nist.michelso, 0.535199668621283],
    ["NumAcc1", nist.numAcc1, -0.5],
    ["NumAcc2", nist.numAcc2, -0.999],
    ["NumAcc3", nist.numAcc3, -0.999],
    ["NumAcc4", nist.numAcc4, -0.999],
  ])("%s at lag one", (_, data, certified) => {
    expect(correctDigits(autocorrelations(data, 1)[1]!, certified)).toBeGreaterThanOrEqual(9);
  });

  // NumPy 2.4.6, numpy.correlate of the deviations over their sum of squares.
  it("agrees with a reference library at every lag", () => {
    // prettier-ignore
    const expected = [1, 0.07945205479452049, -0.4472602739726027, -0.28561643835616435,
      0.3075342465753425, 0.17465753424657532, -0.28356164383561644, -0.13561643835616438,
      -0.00821917808219175, 0.09863013698630138];
    const found = autocorrelations([2, 4, 4, 7, 1, 3, 8, 8, 5, 2], 99);
    expect(found).toHaveLength(10);
    found.forEach((value, lag) => expect(value).toBeCloseTo(expected[lag]!, 13));
  });

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

  it("says NaN where nothing varies and nothing for nothing", () => {
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
