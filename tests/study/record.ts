/** How one case of the study fared: plain data, so that it travels between processes and into files. */
import type { VerdictWord } from "../../src/culture/verdict-types.ts";
import type { ApplianceKind } from "../simulator/appliance-kinds.ts";
import type { StudyPlan } from "./plan.ts";

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** What was found in one night; degC, minutes from the first reading. */
export interface FoundHold {
  readonly start: number;
  readonly end: number;
  readonly hours: number;
  readonly mean: number;
  readonly band: Interval;
  readonly guarded: Interval;
  readonly standardUncertainty: number;
  readonly drift: Interval & { readonly perHour: number };
  readonly swing: number | null;
}

export interface NightRecord {
  readonly hours: number;
  readonly found: FoundHold | null;
  readonly truth: {
    readonly start: number | null;
    readonly end: number;
    readonly endLeftRange: number;
    readonly mean: number | null;
    readonly band: Interval | null;
    /** The food's own mean and band over the stretches that were found to be hold. */
    readonly sameHours: { readonly mean: number; readonly band: Interval } | null;
    /** Least-squares slope of the food itself over the hold that was found, degC per hour. */
    readonly drift: number | null;
  };
  /** What truly went on in the room from first to last reading. */
  readonly room: Interval;
  readonly events: readonly string[];
}

export interface StudyRecord extends Omit<StudyPlan, "variation"> {
  readonly seed: number;
  readonly kind: ApplianceKind;
  /** The variation, or, without one, "lumped" or "layered". */
  readonly structure: string;
  readonly bodies: "lumped" | "layered";
  readonly container: "basin" | "jar";
  readonly control: string;
  readonly testHours: number;
  readonly byHand: boolean;
  readonly switchesOff: boolean;
  readonly requirement: Interval & { readonly ceiling: number | null; readonly hours: number };
  readonly nights: readonly NightRecord[];
  readonly truth: {
    readonly holds: boolean;
    readonly insideShare: number;
    /** Over the culture's hours. */
    readonly highest: number;
    readonly lowest: number;
    readonly mean: number;
    readonly room: Interval;
    /** Mean and band of the run promised over as many hours from its hold start as the first test held. */
    readonly asTested: { readonly mean: number; readonly band: Interval } | null;
  };
  /** Why there is no answer; null where there is one. */
  readonly problem: string | null;
  readonly answer: {
    readonly verdict: VerdictWord;
    readonly probability: number;
    readonly ceilingRisk: number | null;
    readonly reasons: readonly string[];
    /** Standard uncertainties by source, degC. */
    readonly uncertainty: Readonly<Record<string, number>>;
  } | null;
}
