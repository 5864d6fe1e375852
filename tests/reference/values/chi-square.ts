import { spreadFactor } from "../../../src/culture/fast-residual.ts";
import { normalQuantile } from "../../../src/stats/normal.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

/** The chi-square quantile that `spreadFactor` goes by. */
const impliedQuantile = (p: number, degreesOfFreedom: number): number =>
  degreesOfFreedom / spreadFactor(normalQuantile(p), degreesOfFreedom) ** 2;

// prettier-ignore
const table: readonly (readonly [number, number, string])[] = [
  [0.025, 10, "3.246973"], [0.975, 10, "20.483177"], [0.05, 10, "3.940299"], [0.95, 10, "18.307038"],
  [0.025, 20, "9.590777"], [0.975, 20, "34.169607"], [0.05, 29, "17.708366"], [0.95, 29, "42.556968"],
];

/** Chi-square, as the spread of a handful of readings uses it. */
export const chiSquare: ReferenceGroup = {
  title: "Chi-square",
  about: ["culture/fast-residual"],
  blocks: [
    {
      source: "NIST/SEMATECH e-Handbook 1.3.6.7.4, more digits by SciPy 1.17.1 and R 4.2.2",
      asked: { relative: 0.01 },
      because:
        "the approximation of Wilson and Hilferty, good to 1 % from ten degrees of freedom on; it is used for a factor on a spread",
      values: table.map(([p, df, published]) =>
        value(`quantile ${p}, ${df} degrees of freedom`, published, impliedQuantile(p, df)),
      ),
    },
  ],
};
