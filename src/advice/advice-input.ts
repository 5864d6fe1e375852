/** What the advice is made from: tests already read, set-ups already decided. Temperatures in degC. */
import type { ContainerResponse } from "../container/container-response.ts";
import type { HeldEvidence } from "../culture/hold-plays.ts";
import type { NamedThermometer } from "../culture/thermometer-doubt.ts";
import type { RunScatter } from "../culture/run-to-run.ts";
import type { Requirement, Verdict } from "../culture/verdict-types.ts";
import type { Kitchen, SetUp } from "../kitchen/kitchen.ts";
import type { CorrectionModel } from "../thermometer/correction-model.ts";

export interface AdviceInput {
  readonly kitchen: Kitchen;
  /** Id of the only appliance looked at; null for all. */
  readonly appliance: string | null;
  /** ISO date. */
  readonly today: string;
  readonly requirements: readonly Requirement[];
  readonly confidence: number;
  readonly thermometers: readonly { readonly id: string; readonly model: CorrectionModel }[];
  /** Oldest first; every test of the appliances looked at. */
  readonly tests: readonly AdviceTest[];
  /** Every tested set-up of the appliances looked at. */
  readonly setUps: readonly DecidedSetUp[];
}

/** One water test. */
export interface AdviceTest {
  readonly id: string;
  /** Wall-clock time of the first reading as if in UTC, ms since 1970; null where not known. */
  readonly startedAt: number | null;
  readonly setUp: SetUp;
  /** null where it could not be read, or never settled. */
  readonly settled: SettledTest | null;
}

export interface SettledTest {
  /** Where the probe sat that the test is judged by. */
  readonly place: "food" | "bath";
  /** Mean of the hold means of its judged probes, corrected. */
  readonly level: number;
  /** The judged probe nearest that level. */
  readonly evidence: HeldEvidence & NamedThermometer;
  /** Room temperature while it ran. */
  readonly room: RoomFigure;
  /** How the food followed its bath, where both were measured and it could be told. */
  readonly response: ContainerResponse | null;
  /** How much it counts beside other tests; 1 where nothing is said. */
  readonly weight?: number;
  /** Too short, or too seldom read, to prove anything. */
  readonly tooLittle: boolean;
}

/** A room temperature with what is not known of it. */
export interface RoomFigure {
  readonly mean: number;
  readonly standardDeviation: number;
}

/** A tested set-up with its verdicts. */
export interface DecidedSetUp {
  readonly setUp: SetUp;
  /** Ids of the tests it rests on, oldest first. */
  readonly testIds: readonly string[];
  /** Mean of the tests' hold means; null where none settled. */
  readonly mean: number | null;
  /** How far the next run may lie from it, a standard deviation. */
  readonly runToRun: number;
  readonly scatter: RunScatter;
  /** One per requirement; none where nothing could be judged. */
  readonly verdicts: readonly Verdict[];
}
