/** What comes out of the analysis of a whole kitchen: plain data only. Temperatures in degC. */
import type { KitchenAdvice } from "./advice/advice-types.ts";
import type { Analysis, ProbeAnalysis, RunToRun } from "./analysis-types.ts";
import type { ContainerResponse } from "./container/container-response.ts";
import type { Requirement, Verdict } from "./culture/verdict-types.ts";
import type { Kitchen, KitchenThermometer, SetUp, WaterTest } from "./kitchen/kitchen.ts";
import type { Notice } from "./notice.ts";
import type { Problem } from "./problem.ts";
import type { CheckQuestion } from "./thermometer/check-question.ts";
import type {
  Correction,
  CorrectionDoubt,
  CorrectionModel,
} from "./thermometer/correction-model.ts";

/** What was found in a kitchen, and what follows from it. */
export interface KitchenAnalysis extends KitchenFindings {
  readonly advice: KitchenAdvice;
}

export interface KitchenFindings {
  readonly version: string;
  readonly kitchen: Kitchen;
  /** Id of the only appliance that was looked at; null for all. */
  readonly appliance: string | null;
  /** Of the kitchen's cultures, in its order. */
  readonly requirements: readonly Requirement[];
  readonly share: number;
  readonly confidence: number;
  readonly thermometers: readonly ThermometerAnalysis[];
  /** Oldest first; those of unknown date last. */
  readonly tests: readonly TestAnalysis[];
  /** Every tested set-up, in the order of the kitchen's appliances. */
  readonly setUps: readonly SetUpAnalysis[];
  readonly notices: readonly Notice[];
}

export interface ThermometerAnalysis {
  readonly thermometer: KitchenThermometer;
  readonly model: CorrectionModel;
  /** At readings of 20, 38, 43 and 90 degC. */
  readonly corrections: readonly Correction[];
  /** Where the doubt of the correction at one reading, degC, comes from; largest part first. */
  readonly doubts: { readonly reading: number; readonly parts: readonly CorrectionDoubt[] };
  /** What looks wrong in its checks; a doubtful check nobody confirmed is left out of the model. */
  readonly questions: readonly CheckQuestion[];
  /** Newest date among the checks its correction rests on, and how long ago that was, in days and in whole calendar months; null where none is dated. */
  readonly checked: {
    readonly date: string;
    readonly daysAgo: number;
    readonly monthsAgo: number;
  } | null;
}

/** One water test; either an analysis, or the problem that stood in its way. */
export type TestAnalysis = {
  readonly test: WaterTest;
  /** Wall-clock time of the first reading as if in UTC, ms since 1970; null where not known. */
  readonly startedAt: number | null;
} & (
  | {
      readonly analysis: Analysis;
      readonly problem: null;
      /** For each food probe beside a bath probe. */
      readonly responses: readonly ProbeResponse[];
    }
  | { readonly analysis: null; readonly problem: Problem; readonly responses: readonly [] }
);

export interface ProbeResponse {
  /** Indices into the analysis's probes. */
  readonly food: number;
  readonly bath: number;
  readonly response: ContainerResponse;
}

/** One set-up with all its tests. */
export interface SetUpAnalysis {
  readonly setUp: SetUp;
  /**
   * Ids of the tests it rests on, oldest first. Tests that could not be read are not among them,
   * nor those with too little hold, or without a probe in the food, where there are better ones.
   */
  readonly testIds: readonly string[];
  /** Mean of the tests' hold means, corrected; null where no hold was found. */
  readonly mean: number | null;
  /** How far the next run may lie from that mean. */
  readonly runToRun: RunToRun;
  /** The probe shown for it: of the newest test, the one with the lowest probability. */
  readonly probe: Pick<ProbeAnalysis, "series"> | null;
  /** One per requirement, all tests of the set-up taken together. */
  readonly verdicts: readonly Verdict[];
}
