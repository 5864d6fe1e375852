import { equivalence } from "../../../src/stats/equivalence.ts";
import { fisherExact, leastPossible } from "../../../src/stats/fisher-exact.ts";
import { differenceOfMeans } from "../../../src/stats/two-means.ts";
import { estimateOf, sleepA, sleepB, yieldA, yieldB } from "../two-samples.ts";
import { value } from "../reference-values.ts";
import type { ReferenceBlock, ReferenceGroup } from "../reference-values.ts";

const sleep = differenceOfMeans(estimateOf(sleepA), estimateOf(sleepB));

/** Welch's test of two means. */
export const welch: ReferenceGroup = {
  title: "Difference of two means (Welch)",
  about: ["stats/two-means"],
  blocks: [
    {
      source: "Student 1908, data set sleep; t.test of R 4.2.2",
      asked: "as printed",
      because: "half of the last printed place",
      values: [
        value("t", "-1.8608", sleep.t),
        value("degrees of freedom", "17.776", sleep.degreesOfFreedom),
        value("p", "0.07939", sleep.probability),
      ],
    },
    {
      source: "the same by ttest_ind of SciPy 1.17.1, equal_var=False",
      asked: { absolute: 5e-12 },
      because: "readings in tenths are rounded as doubles",
      values: [
        value("t", "-1.8608134674868526", sleep.t),
        value("degrees of freedom", "17.776473516178488", sleep.degreesOfFreedom),
        value("p", "0.0793941401873583", sleep.probability),
        value("95 % interval, low", "-3.3654832307117104", sleep.low),
        value("95 % interval, high", "0.20548323071171137", sleep.high),
      ],
    },
  ],
};

const estimate = (difference: number, standardUncertainty: number, degreesOfFreedom: number) => ({
  difference,
  standardUncertainty,
  degreesOfFreedom,
});

const equal = equivalence(estimate(-8.115384615384642, 51.11428460762154, 27), 110, 0.025);
const unequal = equivalence(differenceOfMeans(estimateOf(yieldA), estimateOf(yieldB)), 110, 0.025);
const skin = equivalence(estimate(0.0227, 0.13428, 16), Math.log(1.25));

type Tails = readonly [number, number, number, number, string, string, string];
// prettier-ignore
const tails: readonly Tails[] = [
  [0.12, 0.1, 7, 0.5, "0.00022262685998943843", "0.0033573919793692085", "-0.06945786050900063"],
  [-0.31, 0.18, 4.6, 0.6, "0.08655733804236995", "0.0024685107235802293", "-0.6797933555276404"],
  [0.05, 0.02, Infinity, 0.1, "3.1908916729108616e-14", "0.006209665325776132", "0.017102927460970557"],
  [0.9, 0.3, 12, 0.5, "0.0002723024913335644", "0.8964094974422374", "0.36531373330520434"],
  [0.1, 0.1, 3, 0.3, "0.014004228005073076", "0.06966298427942155", "-0.13533634348018234"],
];

const tailValues = ([difference, u, df, bound, low, high, end]: Tails) => {
  const found = equivalence(estimate(difference, u, df), bound);
  const what = `${difference}, u ${u}, ${df} degrees of freedom, against ${bound}`;
  return [
    value(`${what}: low p`, low, found.againstLow),
    value(`${what}: high p`, high, found.againstHigh),
    value(`${what}: low end of the interval`, end, found.low, { absolute: 5e-12 }),
  ];
};

/** Two one-sided tests. */
export const equivalenceTests: ReferenceGroup = {
  title: "Equivalence (two one-sided tests)",
  about: ["stats/equivalence"],
  blocks: [
    {
      source:
        "yields of two processes against -110 and 110, printed in the tests of the R package TOSTER (test-NCSS1.R)",
      asked: "as printed",
      because: "half of the last printed place",
      values: [
        value("equal variances, low p", "0.02821", equal.againstLow),
        value("equal variances, high p", "0.01436", equal.againstHigh),
        value("equal variances, interval low", "-112.99323", equal.low),
        value("equal variances, interval high", "96.76246", equal.high),
        value("unequal variances, low p", "0.03628", unequal.againstLow),
        value("unequal variances, high p", "0.02002", unequal.againstHigh),
        value("unequal variances, interval low", "-120.27336", unequal.low),
        value("unequal variances, interval high", "104.04259", unequal.high),
      ],
    },
    {
      source: "the same by ttest_ind of SciPy 1.17.1",
      asked: { absolute: 5e-13 },
      because: "rounding of a t of order one",
      values: [
        value("equal variances, low p", "0.028213040555990557", equal.againstLow),
        value("equal variances, high p", "0.014358679002275563", equal.againstHigh),
        value("unequal variances, larger p", "0.036279216696992654", unequal.probability),
      ],
    },
    {
      source: "skin data printed by the R package cTOST, bounds ln 1.25",
      asked: { absolute: 2e-5 },
      because: "its inputs are printed to five decimals",
      values: [
        value("interval low", "-0.21174", skin.low),
        value("interval high", "0.25715", skin.high),
      ],
    },
    {
      source: "tails of Student's t and the normal by SciPy 1.17.1; cases constructed",
      asked: { relative: 5e-11 },
      because: "eleven digits of Student's t, and a quotient before it",
      values: tails.flatMap(tailValues),
    },
  ],
};

type Counts = readonly [number, number, number, number, string];
// prettier-ignore
const tables: readonly Counts[] = [
  [10, 2, 3, 15, "3571/6653325"], [0, 5, 5, 0, "1/126"], [1, 9, 11, 3, "41/14858"],
  [8, 2, 1, 5, "5/143"], [2, 3, 6, 4, "87/143"], [0, 2, 6, 4, "5/11"], [2, 0, 0, 2, "1/3"],
  [4, 0, 0, 3, "1/35"], [6, 1, 2, 7, "29/715"], [10, 5, 10, 1, "59/299"],
  [13, 7, 7, 13, "99703489/883631595"], [20, 10, 10, 5, "1"],
  [100, 2, 1000, 5, "0.13007593634300169"], [5, 15, 20, 20, "0.09580440012477634"],
  [5, 16, 20, 25, "0.1725864953812995"], [30, 0, 2, 28, "8.387972010503789e-15"],
  [190, 800, 200, 900, "0.574111858126088"], [1500, 2300, 1600, 2100, "0.0009443724613369832"],
];
// prettier-ignore
const largeTables: readonly Counts[] = [
  [12000, 8000, 11800, 8200, "0.042668822780824324"],
  [100000, 100, 99000, 300, "8.059464702347075e-25"],
];
const fisherBlock = (
  counts: readonly Counts[],
  block: Omit<ReferenceBlock, "values">,
): ReferenceBlock => ({
  ...block,
  values: counts.map(([a, b, c, d, published]) =>
    // prettier-ignore
    value(`${a} ${b} / ${c} ${d}`, published, fisherExact([[a, b], [c, d]])),
  ),
});

/** Fisher's exact test. */
export const fisher: ReferenceGroup = {
  title: "Fisher's exact test",
  about: ["stats/fisher-exact"],
  blocks: [
    {
      source: "Fisher 1935, The Design of Experiments, ch. II (from memory); fisher.test of R",
      asked: "as printed",
      because: "half of the last printed place",
      values: [
        // prettier-ignore
        value("tea tasting, 3 1 / 1 3", "0.4857", fisherExact([[3, 1], [1, 3]])),
      ],
    },
    {
      source: "the same: 34 of 70 choices as good, 2 of 70 all right or all wrong",
      asked: { absolute: 5e-15 },
      because: "exact in whole numbers",
      values: [
        // prettier-ignore
        value("tea tasting, 3 1 / 1 3", "34/70", fisherExact([[3, 1], [1, 3]])),
        value("least p these margins allow", "2/70", leastPossible([4, 4], [4, 4])),
      ],
    },
    fisherBlock(tables, {
      source: "fisher_exact of SciPy 1.17.1; as fractions in whole numbers (Python)",
      asked: { digits: 12 },
      because: "sums of thousands of rounded terms at most",
    }),
    fisherBlock(largeTables, {
      source: "fisher_exact of SciPy 1.17.1",
      asked: { digits: 10 },
      because: "tens of thousands of counts, where SciPy's own rounding leaves ten",
    }),
  ],
};
