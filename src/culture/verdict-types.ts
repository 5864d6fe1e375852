import type { DwellTimes } from "../hold/dwell.ts";
import type { Celsius, CelsiusDifference, Fraction, Hours } from "../quantity.ts";
import type { GrowthLimits } from "./culture.ts";

/** What a culture asks of a set-up. */
export interface Requirement {
  /** Catalogue id, or "window" for one given with --low and --high. */
  readonly culture: string;
  /** What people call the culture; empty for a window typed by hand. */
  readonly name: string;
  readonly low: Celsius;
  readonly high: Celsius;
  /** Never above; null where none is given. */
  readonly ceiling: Celsius | null;
  readonly hours: Hours;
  /** Share of the hours that must lie inside the window. */
  readonly share: Fraction;
  /** Its organisms with the temperatures between which they grow; none for a window typed by hand. */
  readonly growth?: readonly GrowthLimits[];
}

export type VerdictWord = "holds" | "misses" | "unproven";

/** Where a figure comes from. */
export type Provenance = "measured" | "stated" | "assumed";

export type UncertaintySource =
  "thermometer" | "resolution" | "mean of the hold" | "run to run" | "hours not tested" | "drift";

/** One line of the uncertainty budget, degC (JCGM 100, 5.1). */
export interface UncertaintyComponent {
  readonly source: UncertaintySource;
  readonly standardUncertainty: CelsiusDifference;
  readonly from: Provenance;
}

/** Why the verdict is what it is; wording lives in report/. Temperatures in degC. */
export type Reason =
  | { readonly code: "all-inside"; readonly marginLow: number; readonly marginHigh: number }
  | { readonly code: "above-window"; readonly high: number; readonly share: number }
  | { readonly code: "below-window"; readonly low: number; readonly share: number }
  | {
      readonly code: "mean-outside";
      readonly mean: number;
      readonly side: "above" | "below";
      readonly by: number;
    }
  | { readonly code: "swing-too-wide"; readonly peakToPeak: number; readonly windowWidth: number }
  | { readonly code: "drifts-out"; readonly perHour: number; readonly side: "above" | "below" }
  | {
      readonly code: "passes-ceiling";
      readonly ceiling: number;
      readonly peak: number;
      readonly probability: number;
    }
  | {
      readonly code: "near-ceiling";
      readonly ceiling: number;
      readonly peak: number;
      readonly probability: number;
    }
  | {
      readonly code: "near-edge";
      readonly edge: number;
      readonly side: "above" | "below";
      readonly margin: number;
      readonly uncertainty: number;
    }
  | {
      readonly code: "dominant-doubt";
      readonly source: UncertaintySource;
      readonly standardUncertainty: number;
      readonly share: number;
      readonly from: Provenance;
      /** What the verdict would be if this doubt were gone. */
      readonly without?: { readonly verdict: VerdictWord; readonly probability: number };
    }
  | { readonly code: "tested-too-short"; readonly tested: number; readonly needed: number }
  | { readonly code: "too-little-hold"; readonly hours: number; readonly readings: number }
  | { readonly code: "fell-away"; readonly afterHours: number; readonly needed: number }
  /** The warm-up went above the ceiling although the hold does not. */
  | { readonly code: "overshoot-before-hold"; readonly ceiling: number; readonly peak: number }
  | { readonly code: "never-reached"; readonly low: number; readonly peak: number }
  | { readonly code: "no-hold" }
  | {
      readonly code: "would-settle";
      readonly source: UncertaintySource;
      readonly verdict: VerdictWord;
      readonly probability: number;
    };

export interface Verdict {
  readonly requirement: Requirement;
  readonly verdict: VerdictWord;
  /** Probability that the requirement is met over the culture's full hours. */
  readonly probability: Fraction;
  /** Probability that the ceiling is passed at some time; null without a ceiling. */
  readonly ceilingRisk: Fraction | null;
  readonly dwell: DwellTimes | null;
  readonly uncertainty: readonly UncertaintyComponent[];
  readonly reasons: readonly Reason[];
}
