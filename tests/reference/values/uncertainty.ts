import { combinedUncertainty } from "../../../src/culture/uncertainty-budget.ts";
import { offsetCdf } from "../../../src/culture/offset-distribution.ts";
import { celsiusDifference } from "../../../src/quantity.ts";
import { effectiveDegreesOfFreedom } from "../../../src/stats/effective-degrees-of-freedom.ts";
import { studentTQuantile } from "../../../src/stats/student-t.ts";
import { rectangularUncertainty, resolutionUncertainty } from "../../../src/thermometer/budget.ts";
import { correctionAt } from "../../../src/thermometer/correction-at.ts";
import type {
  CorrectionComponent,
  CorrectionModel,
} from "../../../src/thermometer/correction-model.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

const shares = [
  { standardUncertainty: 0.25, degreesOfFreedom: 9 },
  { standardUncertainty: 0.57, degreesOfFreedom: 4 },
  { standardUncertainty: 0.82, degreesOfFreedom: 14 },
];
const freedom = effectiveDegreesOfFreedom(shares);
const model: CorrectionModel = {
  centre: 50,
  correction: -0.8,
  slope: -0.03,
  components: shares.map(({ standardUncertainty, degreesOfFreedom }): CorrectionComponent => ({
    source: "statement",
    shape: "line",
    atCentre: standardUncertainty,
    perDegree: 0,
    correlation: 0,
    degreesOfFreedom,
    from: "measured",
  })),
  from: "measured",
  accuracy: null,
};
const combined = correctionAt(model, 40);

/** Welch-Satterthwaite. */
export const effectiveDegrees: ReferenceGroup = {
  title: "Effective degrees of freedom",
  about: ["stats/effective-degrees-of-freedom", "thermometer/correction-at"],
  blocks: [
    {
      source: "JCGM 100:2008, G.4.1, three relative uncertainties in percent (inputs from memory)",
      asked: "as printed",
      because: "half of the last printed place",
      values: [
        value("combined standard uncertainty", "1.03", combined.standardUncertainty),
        value("effective degrees of freedom", "19.0", freedom),
        value("expanded uncertainty", "2.2", combined.expanded),
      ],
    },
    {
      source: "the same unrounded, SciPy 1.17.1 and R 4.2.2",
      asked: { absolute: 5e-7 },
      because: "half of the sixth decimal; the degrees of freedom one place less",
      values: [
        value("combined standard uncertainty", "1.029466", combined.standardUncertainty),
        value("effective degrees of freedom", "18.998743", freedom, { absolute: 5e-6 }),
        value("those of the thermometer's correction", "18.998743", combined.degreesOfFreedom, {
          absolute: 5e-6,
        }),
        value("t 0.975 of 19", "2.093024", studentTQuantile(0.975, Math.round(freedom))),
      ],
    },
  ],
};

/** DKD-R 5-7's humidity example: half-widths of rectangles, and a display's full width. */
const rectangles = [
  rectangularUncertainty(1.8),
  rectangularUncertainty(1.2),
  rectangularUncertainty(0.44),
  resolutionUncertainty(1),
];

/** Rectangles and their sum. */
export const rectangularBudget: ReferenceGroup = {
  title: "Rectangular distributions and the combined uncertainty",
  about: ["thermometer/budget", "culture/uncertainty-budget"],
  blocks: [
    {
      source:
        "DKD-R 5-7, uncertainty example of a climatic chamber: 1.8, 1.2, 0.44 as half-widths, 1.0 as resolution; standard uncertainties by arithmetic",
      asked: { absolute: 5e-7 },
      because: "half of the sixth decimal",
      values: [
        value("inhomogeneity", "1.039230", rectangles[0]!),
        value("instability", "0.692820", rectangles[1]!),
        value("loading", "0.254034", rectangles[2]!),
        value("resolution", "0.288675", rectangles[3]!),
        value(
          "root sum of squares",
          "1.306854",
          combinedUncertainty(
            rectangles.map((one) => ({
              source: "thermometer",
              standardUncertainty: celsiusDifference(one),
              from: "stated",
            })),
          ),
        ),
      ],
    },
  ],
};

/** Probability that y, read with standard uncertainty u, lies in low..high. */
const conformance = (y: number, u: number, low: number, high: number): number => {
  const offset = { halfWidth: 0, standardDeviation: u };
  return offsetCdf(high - y, offset) - offsetCdf(low - y, offset);
};

/** Conformance probability of a limit or a window. */
export const conformity: ReferenceGroup = {
  title: "Conformance probability",
  about: ["culture/offset-distribution"],
  blocks: [
    {
      source:
        "JCGM 106:2012, 7.3.3 examples 1 and 2 and 7.4 (inputs and printed values from memory)",
      asked: "as printed",
      because: "half of the last printed place",
      values: [
        value("breakdown voltage", "0.92", conformance(-5.47, 0.05, -Infinity, -5.4)),
        value("burst strength", "0.99", conformance(509.7, 8.6, 490, Infinity)),
        value("oil viscosity", "0.66", conformance(13.6, 1.8, 12.5, 16.3)),
      ],
    },
    {
      source: "the same and windows in degC, SciPy 1.17.1 and R 4.2.2 alike; windows constructed",
      asked: { absolute: 1e-6 },
      because: "one unit of the sixth decimal",
      values: (
        [
          ["breakdown voltage", -5.47, 0.05, -Infinity, -5.4, "0.919243"],
          ["burst strength", 509.7, 8.6, 490, Infinity, "0.989010"],
          ["oil viscosity", 13.6, 1.8, 12.5, 16.3, "0.662630"],
          ["40.2, u 0.6, in 38 to 43", 40.2, 0.6, 38, 43, "0.999876"],
          ["42.4, u 0.4, in 38 to 43", 42.4, 0.4, 38, 43, "0.933193"],
          ["37.5, u 0.35, in 37 to 43", 37.5, 0.35, 37, 43, "0.923436"],
          ["37, u 0.5, in 36 to 38", 37, 0.5, 36, 38, "0.954500"],
          ["44.2, u 0.3, in 40 to 44", 44.2, 0.3, 40, 44, "0.252493"],
        ] as const
      ).map(([what, y, u, low, high, published]) =>
        value(what, published, conformance(y, u, low, high)),
      ),
    },
    {
      source:
        "ILAC-G8:09/2019, as quoted: guard band of one expanded uncertainty, k = 2 and k = 1.96",
      asked: { absolute: 1e-6 },
      because: "printed in percent to four decimals, by arithmetic on the normal distribution",
      values: [
        value(
          "worst false acceptance, k = 2",
          "0.022750",
          offsetCdf(-2, { halfWidth: 0, standardDeviation: 1 }),
        ),
        value(
          "worst false acceptance, k = 1.96",
          "0.024998",
          offsetCdf(-1.96, { halfWidth: 0, standardDeviation: 1 }),
        ),
      ],
    },
  ],
};
