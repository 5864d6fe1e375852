import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bayesianRegression,
  observationWeights,
  regressionPrediction,
  type Regression,
  type RegressionPrior,
} from "../../src/stats/bayesian-regression.ts";
import { studentTQuantile } from "../../src/stats/student-t.ts";
import { longley } from "./longley.ts";
import { norris } from "./nist-data.ts";
import { seededNormal, seededUniform } from "./seeded-noise.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { linearRegression } from "../reference/values/linear.ts";

describeReferences(linearRegression);

const x = [-10, -4, 0, 2, 6];
const y = [31.3, 36.2, 40.1, 41.2, 45.4];
const weights = [1, 1, 0.5, 2, 1];
const rows = x.map((one) => [1, one]);
const prior: RegressionPrior = {
  mean: [39, 0.9],
  standardDeviation: [2, 0.2],
  scale: 0.6,
  degreesOfFreedom: 4,
};

/** Covariance of the coefficients, of Student's t: the scales' times nu / (nu - 2). */
const covariance = (fit: Regression, at: number): number =>
  (fit.scale ** 2 * fit.covarianceFactor[at]! * fit.degreesOfFreedom) / (fit.degreesOfFreedom - 2);

const quantile = (fit: Regression, row: readonly number[], p: number): number => {
  const { mean, scale, degreesOfFreedom } = regressionPrediction(fit, row);
  return mean + scale * studentTQuantile(p, degreesOfFreedom);
};

// The posterior of this example summed on a grid of 121 x 121 x 7260 points over intercept, slope
// and the logarithm of sigma, from the densities of the prior and of each observation (SciPy
// 1.17.1: invgamma, norm), predictive quantiles by brentq on the summed distribution function.
// 81 x 81 x 4860 points give the same to 13 digits; 1e-10 leaves room for what lies off the grid.
describe("bayesianRegression against the posterior summed on a grid", () => {
  const fit = bayesianRegression(rows, y, prior, weights);
  const fixedPrior = { ...prior, standardDeviation: [2, 0] };
  const fixed = bayesianRegression(rows, y, fixedPrior, weights);

  it.each([
    ["intercept", fit.coefficients[0]!, 39.77273852978863],
    ["its sd", Math.sqrt(covariance(fit, 0)), 0.22664420355392895],
    ["slope", fit.coefficients[1]!, 0.8674020953796125],
    ["its sd", Math.sqrt(covariance(fit, 3)), 0.041219922229590866],
    ["their covariance", covariance(fit, 1), 0.001215801065197513],
    ["mean of sigma squared", (fit.scale ** 2 * 9) / 7, 0.28228165181489473],
    ["2.5 % of one more at 9", quantile(fit, [1, 9], 0.025), 46.178337964846655],
    ["20 %", quantile(fit, [1, 9], 0.2), 47.03223980219337],
    ["97.5 %", quantile(fit, [1, 9], 0.975), 48.980376811564014],
    ["intercept, slope fixed", fixed.coefficients[0]!, 39.796064400715565],
    ["its sd", Math.sqrt(covariance(fixed, 0)), 0.23454058800510563],
    ["mean of sigma squared, slope fixed", (fixed.scale ** 2 * 9) / 7, 0.30750191668775423],
    ["2.5 % of one more at 9, slope fixed", quantile(fixed, [1, 9], 0.025), 46.69487564996139],
    ["97.5 %, slope fixed", quantile(fixed, [1, 9], 0.975), 49.09725315146976],
  ])("%s", (_, found, summed) => {
    expect(Math.abs(found / summed - 1)).toBeLessThan(1e-10);
  });

  it("leaves a fixed coefficient exactly where it was", () => {
    expect(fixed.coefficients[1]).toBe(0.9);
    expect(Array.from(fixed.covarianceFactor.subarray(1))).toEqual([0, 0, 0]);
    expect(fit.degreesOfFreedom).toBe(9);
  });

  it("does the same with the fixed coefficient's part taken off y beforehand", () => {
    const without = bayesianRegression(
      rows.map(() => [1]),
      y.map((one, i) => one - 0.9 * x[i]!),
      { ...prior, mean: [39], standardDeviation: [2] },
      weights,
    );
    expect(fixed.coefficients[0]).toBeCloseTo(without.coefficients[0]!, 12);
    expect(fixed.scale).toBeCloseTo(without.scale, 12);
  });
});

const flat = (coefficients: number): RegressionPrior => ({
  mean: Array.from({ length: coefficients }, () => 0),
  standardDeviation: Array.from({ length: coefficients }, () => Infinity),
  scale: 1,
  degreesOfFreedom: -coefficients,
});

const deviation = (fit: Regression, j: number): number =>
  fit.scale * Math.sqrt(fit.covarianceFactor[j * fit.coefficients.length + j]!);

describe("bayesianRegression with a flat prior is least squares", () => {
  const ofPairs = bayesianRegression(
    norris.x.map((one) => [1, one]),
    norris.y,
    flat(2),
  );
  const seven = bayesianRegression(
    longley.map(([, ...row]) => [1, ...row]),
    longley.map(([employed]) => employed),
    flat(7),
  );

  it("has n - p degrees of freedom", () => {
    expect([ofPairs.degreesOfFreedom, seven.degreesOfFreedom]).toEqual([34, 9]);
  });
});

describe("bayesianRegression holds to what must not matter", () => {
  const fit = bayesianRegression(rows, y, prior, weights);

  it("takes rows in any order", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: 5 }), (order) => {
        const other = bayesianRegression(
          order.map((i) => rows[i]!),
          order.map((i) => y[i]!),
          prior,
          order.map((i) => weights[i]!),
        );
        expect(other.scale).toBeCloseTo(fit.scale, 12);
        expect(other.coefficients[1]).toBeCloseTo(fit.coefficients[1]!, 12);
        expect(other.covarianceFactor[1]).toBeCloseTo(fit.covarianceFactor[1]!, 12);
      }),
    );
  });

  // Weights are precisions: twice the weight is the row twice, but one degree of freedom, not two.
  it("takes weight 2 for the row twice, except in the degrees of freedom", () => {
    const twice = bayesianRegression(
      [...rows, rows[3]!],
      [...y, y[3]!],
      prior,
      [1, 1, 0.5, 1, 1, 1],
    );
    expect(twice.coefficients[0]).toBeCloseTo(fit.coefficients[0]!, 12);
    expect(twice.covarianceFactor[0]).toBeCloseTo(fit.covarianceFactor[0]!, 12);
    expect(twice.scale ** 2 * 10).toBeCloseTo(fit.scale ** 2 * 9, 12);
    expect([twice.degreesOfFreedom, fit.degreesOfFreedom]).toEqual([10, 9]);
  });

  it("does not count rows without weight", () => {
    const more = bayesianRegression([...rows, [1, 3]], [...y, -200], prior, [...weights, 0]);
    expect(more).toEqual(fit);
  });

  // Of one coefficient the posterior has the prior's form, so it can be the prior of the rest.
  it("learns from two halves what it learns from the whole", () => {
    const slopePrior = { mean: [0.9], standardDeviation: [0.3], scale: 0.6, degreesOfFreedom: 3 };
    const slopes = x.map((one) => [one]);
    const rise = y.map((one) => one - 39.8);
    const half = bayesianRegression(slopes.slice(0, 2), rise.slice(0, 2), slopePrior);
    const rest = bayesianRegression(slopes.slice(2), rise.slice(2), {
      mean: [half.coefficients[0]!],
      standardDeviation: [half.scale * Math.sqrt(half.covarianceFactor[0]!)],
      scale: half.scale,
      degreesOfFreedom: half.degreesOfFreedom,
    });
    const whole = bayesianRegression(slopes, rise, slopePrior);
    expect(rest.coefficients[0]).toBeCloseTo(whole.coefficients[0]!, 12);
    expect(rest.covarianceFactor[0]).toBeCloseTo(whole.covarianceFactor[0]!, 12);
    expect(rest.scale).toBeCloseTo(whole.scale, 12);
    expect(rest.degreesOfFreedom).toBe(8);
  });

  it("says how each observation moves a prediction", () => {
    const pulls = observationWeights(fit, rows, [1, 9], weights);
    // The mean is linear in y, so a difference over any step is exact but for rounding, 1e-14 of 40.
    pulls.forEach((pull, i) => {
      const moved = y.map((one, k) => (k === i ? one + 1 : one));
      const other = bayesianRegression(rows, moved, prior, weights);
      const by = regressionPrediction(other, [1, 9]).mean - regressionPrediction(fit, [1, 9]).mean;
      expect(pull).toBeCloseTo(by, 11);
    });
    expect(observationWeights(fit, [], [1, 9])).toHaveLength(0);
  });
});

describe("bayesianRegression at its limits", () => {
  it("gives the prior back without rows", () => {
    const fit = bayesianRegression([], [], prior);
    expect(Array.from(fit.coefficients)).toEqual([39, 0.9]);
    expect([fit.scale, fit.degreesOfFreedom]).toEqual([0.6, 4]);
    expect([deviation(fit, 0), deviation(fit, 1)]).toEqual([
      expect.closeTo(2, 14),
      expect.closeTo(0.2, 14),
    ]);
    expect(fit.covarianceFactor[1]).toBe(0);
  });

  it("takes sigma for known where the prior says so", () => {
    const known = bayesianRegression(rows, y, { ...prior, degreesOfFreedom: Infinity }, weights);
    const open = bayesianRegression(rows, y, prior, weights);
    expect([known.scale, known.degreesOfFreedom]).toEqual([0.6, Infinity]);
    expect(known.coefficients).toEqual(open.coefficients);
  });

  it("has no scale where no degree of freedom is left", () => {
    const fit = bayesianRegression(rows.slice(0, 2), y.slice(0, 2), flat(2));
    expect(fit.coefficients[1]).toBeCloseTo((36.2 - 31.3) / 6, 12);
    expect([fit.scale, fit.degreesOfFreedom]).toEqual([NaN, 0]);
  });

  it("refuses what has no solution", () => {
    expect(() => bayesianRegression([], [], flat(1))).toThrow(RangeError);
    expect(() => bayesianRegression([[1, 0]], [40], flat(2))).toThrow("nothing was observed");
    expect(() => bayesianRegression(rows, [1], prior)).toThrow("do not fit");
    expect(() => bayesianRegression([[1]], [1], prior)).toThrow("do not fit");
    expect(() => bayesianRegression([], [], { ...prior, scale: 0 })).toThrow("above 0");
    expect(() => bayesianRegression([], [], { ...prior, standardDeviation: [1, -1] })).toThrow(
      "below 0",
    );
  });
});

describe("predictions cover as often as they say", () => {
  // Worlds drawn from the prior itself (sigma^2 = nu0 s0^2 / chi-square), data drawn from them.
  const draws = 4000;
  const normal = seededNormal(20240611);
  const uniform = seededUniform(7);

  const drawWorld = (): { readonly beta: readonly number[]; readonly sigma: number } => {
    let chiSquare = 0;
    for (let k = 0; k < prior.degreesOfFreedom; k += 1) chiSquare += normal() ** 2;
    const sigma = prior.scale * Math.sqrt(prior.degreesOfFreedom / chiSquare);
    const spread = sigma / prior.scale;
    const beta = prior.mean.map((m, j) => m + normal() * prior.standardDeviation[j]! * spread);
    return { beta, sigma };
  };

  const countInside = (level: number): { readonly more: number; readonly mean: number } => {
    let more = 0;
    let mean = 0;
    for (let draw = 0; draw < draws; draw += 1) {
      const { beta, sigma } = drawWorld();
      const seen = 1 + Math.floor(uniform() * 5);
      const line = (at: number): number => beta[0]! + beta[1]! * at;
      const data = x
        .slice(0, seen)
        .map((at, i) => line(at) + (sigma * normal()) / Math.sqrt(weights[i]!));
      const fit = bayesianRegression(rows.slice(0, seen), data, prior, weights.slice(0, seen));
      const at = 20 * uniform() - 10;
      const expected = regressionPrediction(fit, [1, at]);
      const t = studentTQuantile((1 + level) / 2, expected.degreesOfFreedom);
      const next = line(at) + sigma * normal();
      more += Number(Math.abs(next - expected.mean) <= t * expected.scale);
      mean += Number(Math.abs(line(at) - expected.mean) <= t * expected.meanScale);
    }
    return { more, mean };
  };

  it.each([0.95, 0.5])("at %f", (level) => {
    const { more, mean } = countInside(level);
    const tolerance = 3 * Math.sqrt((level * (1 - level)) / draws);
    expect(Math.abs(more / draws - level)).toBeLessThan(tolerance);
    expect(Math.abs(mean / draws - level)).toBeLessThan(tolerance);
  });
});
