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

export interface HeatingStep {
  readonly target: HeatingTarget;
  /** Longest continuous spell at or above the target, corrected; null where it was never reached. */
  readonly longest: HeatingSpell | null;
  /** The same with the expanded uncertainty taken off every reading. */
  readonly guarded: HeatingSpell | null;
  readonly peak: number;
  /** Minutes at the target that would do the same, by the lethal rate 10^((T - target) / z). */
  readonly equivalentMinutes: { readonly value: number; readonly standardUncertainty: number };
  /** `holds`: the spell was long enough; `misses`; `unproven`. */
  readonly verdict: VerdictWord;
  readonly probability: number;
  readonly uncertainty: readonly {
    readonly source: string;
    readonly standardUncertainty: number;
    readonly from: Provenance;
  }[];
}

/** From the heating's end until the culture may go in. */
export interface HeatingCoolDown {
  /** The culture's ceiling, or where it is set to go in. */
  readonly to: number;
  /** Last minute at or above the target. */
  readonly fromMinute: number;
  /** When readings plus their expanded uncertainty fell below `to`; null while it still cools. */
  readonly safeAtMinute: number | null;
  /** By Newton's law of cooling from the readings so far; null where it cannot be told or is not needed. */
  readonly predicted: {
    readonly minute: number;
    readonly low: number;
    readonly high: number;
    readonly timeConstantMinutes: number;
    readonly surroundings: number;
  } | null;
}
