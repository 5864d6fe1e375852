import {
  bayesianRegression,
  regressionPrediction,
} from "../../../src/stats/bayesian-regression.ts";
import type { Regression, RegressionPrior } from "../../../src/stats/bayesian-regression.ts";
import { fitLine } from "../../../src/stats/line-fit.ts";
import { penalisedLeastSquares } from "../../../src/stats/penalised-least-squares.ts";
import { longley } from "../../stats/longley.ts";
import { norris } from "../../stats/nist-data.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

const norrisFit = fitLine(norris.x, norris.y);

/** A prior that says nothing: the posterior is then plain least squares. */
const flat = (coefficients: number): RegressionPrior => ({
  mean: Array.from({ length: coefficients }, () => 0),
  standardDeviation: Array.from({ length: coefficients }, () => Infinity),
  scale: 1,
  degreesOfFreedom: -coefficients,
});

const deviation = (fit: Regression, j: number): number =>
  fit.scale * Math.sqrt(fit.covarianceFactor[j * fit.coefficients.length + j]!);

const line = bayesianRegression(
  norris.x.map((one) => [1, one]),
  norris.y,
  flat(2),
);
const seven = bayesianRegression(
  longley.map(([, ...row]) => [1, ...row]),
  longley.map(([employed]) => employed),
  flat(7),
);
const longleyEstimates = [
  ["-3482258.63459582", "890420.383607373"],
  ["15.0618722713733", "84.9149257747669"],
  ["-0.358191792925910E-01", "0.334910077722432E-01"],
  ["-2.02022980381683", "0.488399681651699"],
  ["-1.03322686717359", "0.214274163161675"],
  ["-0.511041056535807E-01", "0.226073200069370"],
  ["1829.15146461355", "455.478499142212"],
] as const;

const powers = Array.from({ length: 21 }, (_, x) => [1, x, x ** 2, x ** 3, x ** 4, x ** 5]);
const wampler = penalisedLeastSquares({
  rows: powers,
  y: powers.map((row) => row.reduce((sum, one) => sum + one)),
  weights: Array.from({ length: 21 }, () => 1),
  centre: Array.from({ length: 6 }, () => 0),
  precision: Array.from({ length: 6 }, () => 0),
})!;

const weighted = fitLine(
  [1, 2, 3, 4, 6, 9],
  [2.1, 3.9, 6.2, 7.8, 12.5, 17.6],
  [1, 2, 0.5, 1, 4, 0.25],
);

/** Least squares of a line. */
export const straightLine: ReferenceGroup = {
  title: "Straight line",
  about: ["stats/line-fit"],
  blocks: [
    {
      source: "NIST StRD, linear regression, Norris",
      asked: { digits: 11 },
      because: "nine is the rule for certified linear values; this fit works on centred x",
      values: [
        value("B0", "-0.262323073774029", norrisFit.intercept),
        value("B1", "1.00211681802045", norrisFit.slope),
        value("sd of B0", "0.232818234301152", norrisFit.interceptUncertainty),
        value("sd of B1", "0.429796848199937E-03", norrisFit.slopeUncertainty),
        value("residual sd", "0.884796396144373", norrisFit.residualStandardDeviation),
        value("residual sum of squares", "26.6173985294224", norrisFit.residualSumOfSquares),
      ],
    },
    {
      source: "NumPy 2.4.6, numpy.polyfit with weights and covariance; readings constructed",
      asked: { absolute: 5e-13 },
      because: "rounding of numbers near 1 through a few sums",
      values: [
        value("weighted intercept", "-0.14256707759245843", weighted.intercept),
        value("weighted slope", "2.080203045685279", weighted.slope),
        value("variance of the slope", "0.0034661970897766647", weighted.slopeUncertainty ** 2),
        value(
          "variance of the intercept",
          "0.07675150698791185",
          weighted.interceptUncertainty ** 2,
        ),
        value("their covariance", "-0.014558027777061992", weighted.covariance),
      ],
    },
  ],
};

/** Least squares of several coefficients. */
export const linearRegression: ReferenceGroup = {
  title: "Linear regression",
  about: ["stats/bayesian-regression"],
  blocks: [
    {
      source: "NIST StRD, linear regression, Norris, by Bayesian regression with a flat prior",
      asked: { digits: 11 },
      because: "normal equations square the design's condition, 1e3",
      values: [
        value("B0", "-0.262323073774029", line.coefficients[0]!),
        value("B1", "1.00211681802045", line.coefficients[1]!),
        value("sd of B0", "0.232818234301152", deviation(line, 0)),
        value("sd of B1", "0.429796848199937E-03", deviation(line, 1)),
        value("residual sd", "0.884796396144373", line.scale),
        value(
          "sd of the line at 0",
          "0.232818234301152",
          regressionPrediction(line, [1, 0]).meanScale,
        ),
      ],
    },
    {
      source: "NIST StRD, linear regression, Longley, by Bayesian regression with a flat prior",
      asked: { digits: 9 },
      because:
        "the rule for certified linear values; one less for the deviations, since the columns are all but dependent and no step refines the inverse",
      values: [
        ...longleyEstimates.flatMap(([estimate, sd], j) => [
          value(`B${j}`, estimate, seven.coefficients[j]!),
          value(`sd of B${j}`, sd, deviation(seven, j), { digits: 8 }),
        ]),
        value("residual sd", "304.854073561965", seven.scale, { digits: 11 }),
      ],
    },
  ],
};

/** Least squares of a polynomial. */
export const polynomial: ReferenceGroup = {
  title: "Ill-conditioned polynomial",
  about: ["stats/penalised-least-squares"],
  blocks: [
    {
      source: "NIST StRD, linear regression, Wampler1",
      asked: { digits: 9 },
      because:
        "the rule for certified linear values; the normal equations alone leave five or six, the refining steps the rest",
      values: Array.from(wampler.coefficients, (one, j) => value(`B${j}`, "1", one)),
    },
  ],
};
