import { incompleteBeta } from "../../../src/stats/incomplete-beta.ts";
import { logBeta, logGamma } from "../../../src/stats/log-gamma.ts";
import { scaledMad } from "../../../src/stats/median.ts";
import { normalCdf, normalDensity, normalQuantile } from "../../../src/stats/normal.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

// prettier-ignore
const normalProbabilities: readonly (readonly [number, string])[] = [
  [-30, "4.906713927148187e-198"], [-20, "2.7536241186062337e-89"], [-10, "7.619853024160525e-24"],
  [-5, "2.866515718791939e-7"], [-3, "0.0013498980316300946"], [-2.000001, "0.022750077957266676"],
  [-2, "0.02275013194817921"], [-1, "0.15865525393145705"], [-0.5, "0.3085375387259869"],
  [-0.001, "0.49960105778608893"], [0, "0.5"], [0.3, "0.6179114221889527"], [1, "0.8413447460685429"],
  [1.5, "0.9331927987311419"], [2, "0.9772498680518208"], [3, "0.9986501019683699"],
  [5, "0.9999997133484281"],
];
// prettier-ignore
const normalQuantiles: readonly (readonly [number, string])[] = [
  [1e-300, "-37.0470962993612"], [1e-100, "-21.273453560965326"], [1e-20, "-9.262340089798407"],
  [1e-10, "-6.361340902404057"], [1e-5, "-4.264890793922825"], [0.001, "-3.0902323061678136"],
  [0.01, "-2.326347874040841"], [0.025, "-1.9599639845400543"], [0.075, "-1.439531470938456"],
  [0.1, "-1.2815515655446004"], [0.3, "-0.5244005127080408"], [0.6, "0.2533471031357997"],
  [0.9, "1.2815515655446006"], [0.975, "1.9599639845400538"], [0.995, "2.5758293035489004"],
];
// prettier-ignore
const betas: readonly (readonly [number, number, number, string])[] = [
  [0.1, 2, 3, "0.0523"], [0.7, 0.5, 4.5, "0.9986770494157325"],
  [0.99, 30, 2, "0.9616104854047645"], [0.5, 200, 200, "0.5"],
];
// prettier-ignore
const gammas: readonly (readonly [number, string])[] = [
  [0.1, "2.252712651734206"], [0.5, "0.5723649429247"], [1, "0"], [3.3, "0.9870985778947343"],
  [10, "12.801827480081469"], [25.5, "56.38916764371994"], [1000, "5905.220423209181"],
];
// prettier-ignore
const logBetas: readonly (readonly [number, number, string])[] = [
  [0.5, 0.5, "1.1447298858494002"], [3, 0.5, "0.06453852113757118"], [1e6, 0.5, "-6.335390211057437"],
  [1e9, 0.5, "-9.789267975423506"], [20, 7.5, "-16.03074240491828"], [7.5, 20, "-16.03074240491828"],
];

/** Normal distribution. */
export const normalDistribution: ReferenceGroup = {
  title: "Normal distribution",
  about: ["stats/normal", "stats/median"],
  blocks: [
    {
      source: "mpmath 1.3.0, ncdf with 30 digits",
      asked: { digits: 13.7 },
      because: "the inputs are doubles: one rounding of z = 30 moves the value by 1e-13",
      values: normalProbabilities.map(([z, published]) =>
        value(`normal probability below ${z}`, published, normalCdf(z)),
      ),
    },
    {
      source: "mpmath 1.3.0, root of ncdf with 30 digits",
      asked: { digits: 14 },
      because: "the last digit of a double is rounding",
      values: normalQuantiles.map(([p, published]) =>
        value(`normal quantile ${p}`, published, normalQuantile(p)),
      ),
    },
    {
      source: "1/sqrt(2 pi), and 1/normal quantile 0.75, to 16 digits (SciPy 1.17.1)",
      asked: { absolute: 5e-16 },
      because: "rounding of a division",
      values: [
        value("normal density at 0", "0.3989422804014327", normalDensity(0)),
        value("factor of the median absolute deviation", "1.482602218505602", scaledMad),
      ],
    },
  ],
};

/** Logarithms of gamma and beta. */
export const gammaFunctions: ReferenceGroup = {
  title: "Gamma and beta functions",
  about: ["stats/log-gamma"],
  blocks: [
    {
      source: "SciPy 1.17.1, gammaln",
      asked: { absolute: 2e-14 },
      because: "1e-14 relative; absolute near the root at 1",
      values: gammas.map(([x, published]) =>
        value(`log gamma of ${x}`, published, logGamma(x), {
          absolute: 2e-14 * (1 + Math.abs(Number(published))),
        }),
      ),
    },
    {
      source: "mpmath 1.3.0 with 40 digits",
      asked: { absolute: 1e-13 },
      because: "with large arguments only a stable difference stays this good",
      values: logBetas.map(([a, b, published]) =>
        value(`log beta of ${a}, ${b}`, published, logBeta(a, b)),
      ),
    },
  ],
};

/** Behind Student's t. */
export const betaFunction: ReferenceGroup = {
  title: "Incomplete beta function",
  about: ["stats/incomplete-beta"],
  blocks: [
    {
      source: "mpmath 1.3.0, betainc regularized with 40 digits",
      asked: { digits: 12 },
      because: "the continued fraction stops at 1e-15 and its factor is an exponential",
      values: betas.map(([x, a, b, published]) =>
        value(`I(${x}; ${a}, ${b})`, published, incompleteBeta(x, a, b)),
      ),
    },
  ],
};
