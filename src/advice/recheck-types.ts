/** Whether a set-up is still what it was, and what that means for its batches: plain data only. degC. */
import type { Separation, SetUp } from "../kitchen/kitchen.ts";
import type { VerdictWord } from "../culture/verdict-types.ts";

/**
 * `moved`: the newest test differs from the baseline by more than chance.
 * `not moved`: whatever difference there is stays within half the margin to the
 * window's edge. `cannot tell`: neither could be shown.
 */
export type RecheckWord = "moved" | "not moved" | "cannot tell";

/** Newest minus baseline, with the middle 95 %. */
export interface RecheckDifference {
  readonly baseline: number;
  readonly now: number;
  readonly difference: number;
  readonly standardUncertainty: number;
  /** Infinity where the doubt's size is taken as known. */
  readonly degreesOfFreedom: number;
  readonly low: number;
  readonly high: number;
}

export interface RecheckTest {
  readonly testId: string;
  /** As in TestAnalysis. */
  readonly startedAt: number | null;
}

/** One culture in the light of a recheck. */
export interface RecheckCulture {
  readonly culture: string;
  /** From the baseline's band to the nearer edge of the window; negative outside. */
  readonly margin: number;
  /** By the equivalence test against half that margin; `cannot tell` where the baseline lay outside already. */
  readonly word: RecheckWord;
  /** What the newest test alone says. */
  readonly now: { readonly verdict: VerdictWord; readonly probability: number };
}

/** Individuals and EWMA charts of a set-up's hold means, oldest first. */
export interface RecheckChart {
  readonly points: readonly {
    readonly testId: string;
    readonly mean: number;
    readonly ewma: number;
    /** Outside its chart's limits. */
    readonly individualSignal: boolean;
    readonly ewmaSignal: boolean;
    /** Of the EWMA at this point: they widen over the first tests. */
    readonly ewmaLow: number;
    readonly ewmaHigh: number;
  }[];
  readonly centre: number;
  readonly low: number;
  readonly high: number;
  /** Standard deviation of one run the limits rest on, and where it is from. */
  readonly deviation: number;
  readonly from: "measured" | "assumed";
}

/** A set-up tested at least twice. */
export interface Recheck {
  readonly setUp: SetUp;
  readonly baseline: RecheckTest;
  readonly newest: RecheckTest;
  /** A thermometer that served both, with no check between them: what it is off by cancels. */
  readonly thermometer: "shared" | "changed";
  /** Hold mean. */
  readonly level: RecheckDifference;
  /** Standard deviation of the hold's readings. */
  readonly spread: RecheckDifference | null;
  /** Peak to peak; null where not both swing. */
  readonly swing: RecheckDifference | null;
  /** degC per hour. */
  readonly drift: RecheckDifference | null;
  /** Minutes. */
  readonly warmUp: RecheckDifference | null;
  /** Difference of the hold means against no difference, whatever a culture asks. */
  readonly word: RecheckWord;
  readonly cultures: readonly RecheckCulture[];
  readonly chart: RecheckChart;
}

/** Why a water test is due. */
export type DueReason =
  /** Separated from the second generation on; null: nobody said which, so it counts as later. */
  | { readonly code: "separated-later"; readonly generation: number | null; readonly date: string }
  /** Separated in two of the last three batches. */
  | { readonly code: "two-in-three"; readonly separated: number; readonly of: number }
  | { readonly code: "never-tested"; readonly batches: number }
  | { readonly code: "season"; readonly monthsAgo: number }
  | { readonly code: "appliance-moved"; readonly date: string }
  | { readonly code: "container-changed"; readonly date: string };

/** A set-up in use that calls for a water test. */
export interface RecheckDue {
  readonly setUp: SetUp;
  /** Newest test of it, by the day; null where there is none. */
  readonly lastTested: string | null;
  readonly reasons: readonly DueReason[];
  /** Separation that is no reason: of the first generation of a fresh starter. */
  readonly usual: readonly { readonly date: string; readonly separated: Separation }[];
}

/** Where separation may come from if not from the temperature; likeliest first. */
export type SeparationCause =
  | { readonly code: "first-generation"; readonly batches: number }
  | {
      readonly code: "held-too-long";
      /** Hours as if at the optimum, against those the culture asks for at its target. */
      readonly equivalentHours: number;
      readonly wantedHours: number;
    }
  | { readonly code: "thin-milk"; readonly batches: number }
  | { readonly code: "unheated-milk"; readonly batches: number }
  | { readonly code: "moved-while-setting"; readonly batches: number }
  | { readonly code: "much-starter"; readonly starter: number; readonly batches: number }
  | { readonly code: "contamination"; readonly batches: number }
  /** Nothing in the log points to it; said of the causes the log is silent about. */
  | { readonly code: "not-logged"; readonly missing: readonly string[] };

/** Does separation go with the margin to the window over the log? */
export interface SeparationAssociation {
  /** Batches in set-ups whose band lies inside the window, and others. */
  readonly insideSeparated: number;
  readonly insideSound: number;
  readonly outsideSeparated: number;
  readonly outsideSound: number;
  /** Two-sided, exact. */
  readonly probability: number;
}

/** What follows for one culture in one set-up that was used for batches. */
export interface BatchFinding {
  readonly setUp: SetUp;
  readonly culture: string;
  readonly batches: number;
  readonly separated: number;
  /** Of the set-up's newest test, for this culture; null where it was never tested. */
  readonly now: { readonly verdict: VerdictWord; readonly probability: number } | null;
  /** Only where the temperature is not it, or nothing is known of it. */
  readonly causes: readonly SeparationCause[];
  /** null where the log is too short to say anything. */
  readonly association: SeparationAssociation | null;
}

export interface RecheckAdvice {
  readonly rechecks: readonly Recheck[];
  readonly due: readonly RecheckDue[];
  readonly findings: readonly BatchFinding[];
}
