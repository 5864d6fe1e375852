import type { ThermometerStatement } from "./budget.ts";
import { boilingPoint } from "./boiling-point.ts";
import type { CorrectionSource } from "./correction-model.ts";
import type { ThermometerCheck } from "./thermometer.ts";

/** What a check's temperature really was, with the doubts about it; degC. */
export interface CheckTruth {
  readonly celsius: number;
  readonly doubts: readonly TruthDoubt[];
}

export interface TruthDoubt {
  readonly source: CorrectionSource;
  readonly standardUncertainty: number;
  readonly from: ThermometerStatement["from"];
}

/**
 * Of a kitchen's ice bath, assumed: tap water, ice not crushed, stirred by hand.
 * A laboratory's careful bath is good to 0.01 degC (tutorials on ASTM E563); five
 * times that is common practice, no source.
 */
const iceBath = 0.05;

/**
 * Of water boiling in a pot, assumed, from memory: 10 cm of depth add 0.27 degC
 * at the bottom, still water superheats, and readings are taken at the surface.
 */
const boilingWater = 0.1;

/** Of a reference thermometer whose uncertainty nobody gave: a good kitchen thermometer's, assumed. */
const reference = 0.1;

/**
 * The true temperature of a check: 0 degC for melting ice, the boiling point of
 * the place, or what the reference showed. null where water was boiled at a
 * place of which nothing is known.
 */
export const checkTruth = (check: ThermometerCheck): CheckTruth | null => {
  if (check.kind === "ice")
    return {
      celsius: 0,
      doubts: [{ source: "ice bath", standardUncertainty: iceBath, from: "assumed" }],
    };
  if (check.kind === "reference") return referenceTruth(check.truth, check.truthUncertainty);
  const point = boilingPoint(check.place);
  if (point === null) return null;
  const { celsius, standardUncertainty, how } = point;
  const from = how === "altitude" ? "assumed" : "stated";
  return {
    celsius,
    doubts: [
      { source: "boiling point", standardUncertainty, from },
      { source: "boiling water", standardUncertainty: boilingWater, from: "assumed" },
    ],
  };
};

const referenceTruth = (celsius: number, stated: number | null): CheckTruth => ({
  celsius,
  doubts: [
    {
      source: "reference thermometer",
      standardUncertainty: stated ?? reference,
      from: stated === null ? "assumed" : "stated",
    },
  ],
});
