/** A heating step of the milk and its cooling, as read from a log: plain data only. degC, minutes from the first reading. */
import type { Provenance, VerdictWord } from "./verdict-types.ts";

/** What a heating step is to reach. */
export interface HeatingTarget {
  readonly celsius: number;
  /** Without a break. */
  readonly minutes: number;
  /** z of the equivalent minutes, degC. */
  readonly z: number;
  readonly from: { readonly name: string; readonly source: string };
}

export interface HeatingSpell {
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly minutes: number;
}

/** Why the verdict is what it is; wording lives in report/. */
export type HeatingReason =
  | { readonly code: "never-reached"; readonly peak: number }
  | { readonly code: "too-short"; readonly missingMinutes: number }
  /** Long enough as read, not with the thermometer's doubt taken off. */
  | { readonly code: "near-target"; readonly margin: number; readonly expanded: number }
  | { readonly code: "log-starts-hot" }
  | { readonly code: "log-ends-hot" }
  /** The readings have a gap, minutes, through which the spell may have gone on. */
  | { readonly code: "gap"; readonly minutes: number }
  /** Readings so far apart that a dip between two of them would not be seen. */
  | { readonly code: "coarse"; readonly intervalMinutes: number }
  /** Too few of them in the spell for it to count as proven. */
  | { readonly code: "few-readings"; readonly readings: number };

export interface HeatingStep {
  readonly target: HeatingTarget;
  /** Longest continuous spell at or above the target, corrected; null where it was never reached. */
  readonly longest: HeatingSpell | null;
  /** The same with the expanded uncertainty taken off every reading. */
  readonly guarded: HeatingSpell | null;
  readonly peak: number;
  /** Highest temperature at or above which it stood for the asked minutes without a break; null where the log is shorter. */
  readonly heldAt: number | null;
  /** Expanded uncertainty (95 %) of a corrected reading at the target. */
  readonly expandedUncertainty: number;
  /** What its thermometer has to show for the target to be surely reached. */
  readonly surelyAtReading: number;
  /** Minutes at the target that would do the same, by the lethal rate 10^((T - target) / z). */
  readonly equivalentMinutes: { readonly value: number; readonly standardUncertainty: number };
  /** `holds`: the spell was long enough; `misses`; `unproven`. */
  readonly verdict: VerdictWord;
  /** That what was logged was a spell long enough; what a gap or the log's ends hide does not count. */
  readonly probability: number;
  readonly reasons: readonly HeatingReason[];
  readonly uncertainty: readonly {
    readonly source: string;
    readonly standardUncertainty: number;
    readonly from: Provenance;
  }[];
}

/** Why it cannot be told when the pot is cool enough. */
export type CoolDownUnknown =
  | "never-above"
  /** Since the heating, or since the rate last changed. */
  | "too-few-readings"
  | "not-cooling"
  /** It seems to level off above. */
  | "levels-off"
  /** The readings fall faster than milk in a pot can: the probe may have been taken out. */
  | "probe-out";

/** From the heating's end until the culture may go in. */
export interface HeatingCoolDown {
  /** The culture's ceiling, or where it is set to go in. */
  readonly to: number;
  readonly of: "ceiling" | "window" | "asked";
  /** Last minute at or above the target, or at the peak where it was never reached. */
  readonly fromMinute: number;
  /** When readings plus their expanded uncertainty fell below `to` for good; null while it still cools. */
  readonly safeAtMinute: number | null;
  /** By Newton's law of cooling from the readings so far; null where it cannot be told or is not needed. */
  readonly predicted: CoolDownPrediction | null;
  readonly unknown: CoolDownUnknown | null;
}

export interface CoolDownPrediction {
  readonly minute: number;
  /** Limits of the 95 % interval. */
  readonly low: number;
  /** null: it may level off above. */
  readonly high: number | null;
  /** At the last reading. */
  readonly timeConstantMinutes: number;
  readonly surroundings: number;
}
