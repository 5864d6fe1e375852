/** Which water test is worth doing, and which verdicts are open: plain data only. */
import type { Provenance, UncertaintySource, VerdictWord } from "../culture/verdict-types.ts";
import type { SetUp } from "../kitchen/kitchen.ts";
import type { Basis } from "./response-types.ts";

/** A water test worth doing. */
export interface NextTest {
  readonly setUp: SetUp;
  readonly basis: Basis;
  /** How long to log after the warm-up. */
  readonly hours: number;
  /** Whether the day has to be in it, not only the night. */
  readonly daytime: boolean;
  /** Between two readings of a logger; no longer than `byHand` by hand. */
  readonly interval: {
    readonly loggerMinutes: number;
    readonly byHandMinutes: number;
    /** Swing whose multiples a reader by hand should not fall into step with; null without one. */
    readonly swingMinutes: number | null;
  };
  /** The kitchen's thermometer that leaves the least doubt at this level; null where there is none. */
  readonly thermometer: {
    readonly id: string;
    readonly standardUncertainty: number;
    readonly word: "good" | "usable" | "too coarse";
  } | null;
  /** Verdicts on this set-up that are open now and would be expected to be decided. */
  readonly gain: number;
  /** Cultures that nothing holds yet and that would be expected to have a proven set-up. */
  readonly served: number;
  /** One per requirement, in their order. */
  readonly outcomes: readonly {
    readonly culture: string;
    /** Probability as things stand. */
    readonly now: number;
    /** How likely the verdict after the test is to be `holds`, or `misses`. */
    readonly holds: number;
    readonly misses: number;
  }[];
}

/** A verdict that is `unproven`, and what would settle it. */
export interface OpenVerdict {
  readonly setUp: SetUp;
  readonly culture: string;
  readonly probability: number;
  /** The heat ended before the culture's hours were over, and nobody knows whether by itself; else null. */
  readonly heatEnded: { readonly afterHours: number; readonly needed: number } | null;
  /** The largest source of doubt; null where there is no hold to speak of, or the heat ended. */
  readonly doubt: {
    readonly source: UncertaintySource;
    readonly standardUncertainty: number;
    readonly from: Provenance;
    /** Of the variance. */
    readonly share: number;
  } | null;
  /** What the verdict would be without that doubt; null where there is no doubt to take away. */
  readonly without: { readonly verdict: VerdictWord; readonly probability: number } | null;
}

export interface NextAdvice {
  /** Most worth doing first; empty where no test would be expected to decide anything. */
  readonly tests: readonly NextTest[];
  readonly open: readonly OpenVerdict[];
}
