/** What the study keeps of one case: plain figures, said and true. */
import type { Answer, Change } from "../../src/advice/advice-types.ts";
import type { Basis } from "../../src/advice/response-types.ts";
import type { ApplianceKind, Control } from "../../src/kitchen/kitchen.ts";

export interface CaseRecord {
  readonly seed: number;
  readonly kind: ApplianceKind;
  readonly control: Control["kind"];
  readonly thermostatted: boolean;
  readonly checked: boolean;
  readonly roomStated: boolean;
  readonly tests: number;
  /** Tests the advice's response rests on. */
  readonly usedTests: number;
  readonly levels: readonly LevelRecord[];
  readonly answers: readonly AnswerRecord[];
  readonly milliseconds: number;
}

/** One expected level against one fresh run of that set-up. */
export interface LevelRecord {
  readonly setUp: string;
  readonly basis: Basis;
  readonly mean: number;
  readonly standardUncertainty: number;
  /** Where the fresh run lies in the predictive distribution, 0 to 1. */
  readonly place: number;
  /** Whether it lies within low..high. */
  readonly inside: boolean;
  readonly fresh: number;
}

/** The advice for one culture against the truth. */
export interface AnswerRecord {
  readonly culture: string;
  readonly answer: Answer;
  readonly change: Change;
  /** Of the set-up advised; null where none is. */
  readonly setUp: string | null;
  readonly basis: Basis | null;
  readonly obstacles: readonly string[];
  readonly said: number | null;
  /** That the set-up advised meets the requirement in a future run. */
  readonly trueProbability: number;
  readonly trueShare: number;
  /** Best over all the appliance offers. */
  readonly bestShare: number;
  readonly bestSetUp: string;
  /** Whether some test that could be used was made at its setting. */
  readonly bestSettingTested: boolean;
  readonly bestProbability: number;
  /** True share of the set-up one would choose knowing all but the thermometer's error. */
  readonly shareByThermometer: number;
  /** Some of the other candidates with this culture, chosen blindly. */
  readonly candidates: readonly CandidateRecord[];
}

export interface CandidateRecord {
  readonly basis: Basis;
  readonly said: number;
  readonly trueProbability: number;
}
