/**
 * Files without a published value of their own, and what holds them instead.
 * The table ends with this list, and a test keeps it complete for the rooms it
 * walks.
 */
export const constructedOnly: readonly (readonly [string, string])[] = [
  ["stats/assignment", "every possible placing, up to 5 x 5; larger ones against SciPy's solvers"],
  [
    "stats/heaviest-assignment",
    "every possible assignment of small tables; larger ones against SciPy's solver",
  ],
  ["stats/largest-matching", "every possible matching of small tables"],
  ["stats/cholesky", "the product of the factors; behind the regressions above"],
  ["stats/orthonormal", "the definition of orthogonality"],
  ["stats/hampel", "the definition written out slowly; its constant stands above"],
  [
    "stats/robust-slope-uncertainty",
    "the matrix form of Newey and West written out in NumPy, for no data set with printed errors was to be had; coverage on seeded noise",
  ],
  ["stats/time-weights", "cells worked by hand"],
  ["stats/truncation", "the definition written out slowly; seeded starts"],
  [
    "stats/normal-sequence",
    "one draw in each stratum of the normal distribution, dimensions unrelated",
  ],
  ["stats/theil-sen", "its thinning of long series; slope and interval stand above"],
  [
    "stats/autocorrelation",
    "the integrated autocorrelation time: theory on seeded series; the autocorrelations stand above",
  ],
  [
    "stats/bayesian-regression",
    "with a prior: the posterior summed on a grid with SciPy; without one it stands above",
  ],
  [
    "thermometer/check-truth",
    "the ice bath's and the pot's doubts are assumptions; 0 degC is ASTM E563's, the boiling point stands above",
  ],
  ["thermometer/check-age", "dates worked by hand"],
  ["thermometer/check-points", "readings and doubts worked by hand"],
  ["thermometer/checked-correction", "cases worked by hand"],
  ["thermometer/constant-correction", "statements taken over unchanged"],
  ["thermometer/display-step", "readings with known decimals"],
  ["thermometer/questions", "constructed checks, each with its mistake"],
  ["thermometer/reading-behind", "the way back through the correction"],
  ["thermometer/scale-conflicts", "constructed checks, each with its mistake"],
  ["thermometer/unchecked-scale", "an assumption (0.5 % of the distance), worked by hand"],
  ["thermometer/window-fitness", "cases worked by hand"],
  [
    "thermometer/line-components",
    "two and four points with common doubts: NumPy, SciPy and R on constructed checks; the guide's example stands above",
  ],
  [
    "culture/heating-targets",
    "targets as their sources print them; z implied by two of them by arithmetic",
  ],
  [
    "culture/lethal-rate",
    "the trapezoid of a process and its straight-line correction: Simpson's rule on constructed readings; the rate stands above",
  ],
  [
    "culture/newton-cooling",
    "the law of still air: small steps; uncertainty of the forecast: each reading moved; Newton's law stands above",
  ],
  [
    "hold and container",
    "warm-up, hold, drift, swing, dwell, band, lag: constructed and simulated nights that carry their truth; no standard's worked numbers were to be had",
  ],
];
