/** Advice on a kitchen: plain data only. Temperatures in degC, times in hours or minutes as named. */
import type { VerdictWord } from "../culture/verdict-types.ts";
import type { SetUp } from "../kitchen/kitchen.ts";
import type { NextAdvice } from "./next-types.ts";
import type { RecheckAdvice } from "./recheck-types.ts";
import type {
  Basis,
  ContainerAdvice,
  ExpectedLevel,
  ResponseCurve,
  ResponseTerm,
  TestedPoint,
} from "./response-types.ts";

/** How likely a candidate is to serve one culture. */
export interface Chance {
  /** That the culture's requirement is met over its full hours. */
  readonly probability: number;
  /** That the ceiling is passed at some time; null without a ceiling, or where nothing tells. */
  readonly ceilingRisk: number | null;
  /** The verdict, for a tested set-up; what one would say, for any other. */
  readonly verdict: VerdictWord;
}

/** One setting with one container: what the appliance really offers. */
export interface Candidate {
  readonly setUp: SetUp;
  readonly basis: Basis;
  /** Its own tests that could be read. */
  readonly testIds: readonly string[];
  /** null where its tests never settled. */
  readonly level: ExpectedLevel | null;
  /** Where the central share of the hold's time is expected: the swing and the slow movement about the level. */
  readonly band: { readonly low: number; readonly high: number } | null;
  /** One per requirement, in their order. */
  readonly chances: readonly Chance[];
}

/**
 * `can`: a tested set-up holds, or one not tested yet would with the asked
 * confidence. `may`: likelier than the floor. `cannot`: below the floor and the
 * readings say why. `unknown`: below the floor because too little is known.
 */
export type Answer = "can" | "may" | "cannot" | "unknown";

/** What would have to change, against the tested set-up that comes nearest. */
export type Change = "none" | "setting" | "container" | "setting and container" | "first test";

/** Why an appliance does not serve a culture, or not surely. */
export type Obstacle =
  | {
      readonly code: "too-warm-at-lowest" | "too-cold-at-highest";
      /** The setting nearest to the window. */
      readonly setUp: SetUp;
      readonly mean: number;
      /** How far that is from the window's edge. */
      readonly by: number;
    }
  /** One setting below the window, the next above it. */
  | {
      readonly code: "settings-too-coarse";
      readonly below: { readonly setUp: SetUp; readonly mean: number };
      readonly above: { readonly setUp: SetUp; readonly mean: number };
    }
  | {
      readonly code: "swings-too-wide";
      readonly peakToPeak: number;
      readonly windowWidth: number;
    }
  /** The band as a whole (swing, wander, drift) is wider than the window. */
  | { readonly code: "band-too-wide"; readonly bandWidth: number; readonly windowWidth: number }
  | { readonly code: "drifts"; readonly perHour: number }
  | { readonly code: "passes-ceiling"; readonly ceiling: number; readonly risk: number }
  /** The heat ended by itself before the culture's hours were over. */
  | { readonly code: "fell-away"; readonly afterHours: number; readonly needed: number }
  | { readonly code: "not-tested" }
  /** There are tests, and none of them settled or could be read. */
  | { readonly code: "only-failed-tests"; readonly tests: number }
  /** By its own tests the set-up holds, and what is known of the appliance otherwise speaks against relying on that. */
  | { readonly code: "stands-alone"; readonly setUp: SetUp; readonly alone: number }
  /** Tests of one set-up lie further apart than runs usually do. */
  | { readonly code: "tests-disagree"; readonly setUp: SetUp; readonly spread: number };

/** What one appliance can do for one culture. */
export interface CultureAdvice {
  readonly culture: string;
  readonly answer: Answer;
  /** The set-up to use, or to come nearest with; null where the appliance offers none. */
  readonly best: Candidate | null;
  /** Of `best`, for this culture. */
  readonly chance: Chance | null;
  readonly change: Change;
  /** The tested set-up the change is counted from; null where none was tested. */
  readonly from: { readonly setUp: SetUp; readonly chance: Chance } | null;
  /** What it would be if the room stayed within these limits; null where that would not help. */
  readonly steadyRoom: {
    readonly low: number;
    readonly high: number;
    readonly probability: number;
  } | null;
  /** Most telling first. */
  readonly obstacles: readonly Obstacle[];
  /** Where this appliance cannot or may not: the other one likeliest to serve, if it is above the floor. */
  readonly elsewhere: {
    readonly appliance: string;
    readonly setUp: SetUp;
    readonly probability: number;
    readonly basis: Basis;
  } | null;
}

export interface ApplianceAdvice {
  readonly appliance: string;
  /** Tests the response rests on: those that settled. */
  readonly tests: readonly TestedPoint[];
  /** The response model's figures: assumed beforehand, and after the tests. */
  readonly terms: readonly ResponseTerm[];
  /** Standard deviation of one run about the response: assumed beforehand, and after the tests. */
  readonly scatter: { readonly prior: number; readonly now: number };
  readonly curves: readonly ResponseCurve[];
  /** Of all it offers those that were tested, and those with a chance above 0.01 for some culture. */
  readonly candidates: readonly Candidate[];
  /** One per requirement, in their order. */
  readonly cultures: readonly CultureAdvice[];
}

/** Several cultures at the same time, one appliance each. */
export interface Match {
  /** One per requirement, in their order. */
  readonly places: readonly MatchPlace[];
  /** Lowest probability among those placed; null where none is. */
  readonly weakest: number | null;
  /** No culture is placed where it is less likely than this. */
  readonly floor: number;
}

export interface MatchPlace {
  readonly culture: string;
  readonly placed: {
    readonly appliance: string;
    readonly candidate: Candidate;
    readonly chance: Chance;
  } | null;
  /** Why it has no place; null where it has one. */
  readonly why: "none-can" | "none-left" | "nothing-known" | null;
  /** The appliance likeliest to serve it if it had the kitchen to itself; null without candidates. */
  readonly alone: {
    readonly appliance: string;
    readonly candidate: Candidate;
    readonly chance: Chance;
  } | null;
}

export interface KitchenAdvice {
  /** In the kitchen's order, those looked at. */
  readonly appliances: readonly ApplianceAdvice[];
  readonly containers: readonly ContainerAdvice[];
  readonly match: Match;
  readonly next: NextAdvice;
  readonly recheck: RecheckAdvice;
  /** Probability below which an appliance is not recommended for a culture. */
  readonly floor: number;
}
