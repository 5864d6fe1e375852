import { relativeRate } from "../../../src/culture/growth-rate.ts";
import { fitCurve } from "../../../src/stats/curve-fit.ts";
import { growthSets } from "../growth-sets.ts";
import { value } from "../reference-values.ts";
import type { ReferenceBlock, ReferenceGroup } from "../reference-values.ts";

const rate = (limits: readonly [number, number, number], celsius: number): number =>
  relativeRate({ minimum: limits[0], optimum: limits[1], maximum: limits[2] }, celsius);

// prettier-ignore
const mixedMilk: readonly (readonly [number, string])[] = [
  [10, "0.090215"], [20, "0.572772"], [30, "1.243255"], [37, "1.549314"], [38.3, "1.56"],
  [42, "1.449687"], [43, "1.372718"], [45, "1.137409"], [48, "0.513981"], [4, "0"], [49.6, "0"],
];
type Starter = readonly [
  string,
  readonly [number, number, number],
  readonly (readonly [number, string])[],
];
// prettier-ignore
const starters: readonly Starter[] = [
  ["S. thermophilus", [20, 40, 50], [[25, "0.15625"], [30, "0.5"], [35, "0.84375"], [38, "0.972"],
    [41, "0.99225"], [43, "0.92575"], [45, "0.78125"], [48, "0.392"]]],
  ["L. bulgaricus", [22, 42.5, 52], [[25, "0.053636"], [30, "0.321700"], [38, "0.867639"],
    [41, "0.983286"], [43, "0.997988"], [45, "0.945729"], [48, "0.707252"]]],
  ["L. acidophilus", [20, 37, 45], [[25, "0.198728"], [30, "0.617030"], [35, "0.959079"],
    [38, "0.988235"], [40, "0.884564"], [41, "0.786096"], [43, "0.478733"], [45, "0"]]],
];

const fitted = (set: (typeof growthSets)[number]): ReferenceBlock => {
  const fit = fitCurve({
    model: ([most, minimum, optimum, maximum], celsius) =>
      most! * rate([minimum!, optimum!, maximum!], celsius),
    x: set.points.map(([celsius]) => celsius),
    y: set.points.map(([, perHour]) => perHour),
    start: set.start,
  })!;
  return {
    source: `nls of R 4.2.2 and SciPy 1.17.1 alike on open data of ${set.organism} (${set.from})`,
    asked: { relative: 1e-4 },
    because:
      "the data are printed to 0.01 degC and 0.0001 per hour, and the fit is extrapolated at the ends",
    values: ["rate at the optimum", "minimum", "optimum", "maximum"]
      .flatMap((what, j) => [value(what, set.parameters[j]!, fit.parameters[j]!)])
      .concat(value("residual sum of squares", set.squares, fit.residualSumOfSquares)),
  };
};

/** Cardinal temperature model with inflection. */
export const growth: ReferenceGroup = {
  title: "Growth over temperature (cardinal temperature model with inflection)",
  about: ["culture/growth-rate"],
  blocks: [
    {
      source:
        "temperatures and rate at the optimum of Medvedova et al. 2019, Fermentation 5(1):2, mixed milk culture; rates by the formula of Rosso et al. 1993 (from memory) in Python",
      asked: { absolute: 5.1e-7 },
      because: "half of the sixth decimal",
      values: mixedMilk.map(([celsius, perHour]) =>
        value(`per hour at ${celsius} degC`, perHour, 1.56 * rate([4, 38.3, 49.6], celsius)),
      ),
    },
    {
      source:
        "limits of Food Biochemistry and Food Processing (Hui, ed.), table 26.1; rates in Python as above",
      asked: { absolute: 5.1e-7 },
      because: "half of the sixth decimal",
      values: starters.flatMap(([organism, limits, rates]) =>
        rates.map(([celsius, share]) =>
          value(`${organism} at ${celsius} degC`, share, rate(limits, celsius)),
        ),
      ),
    },
    ...growthSets.map(fitted),
  ],
};
