/** Where typed readings go: a kitchen, or one file. */
import type { Outcome } from "../../problem.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import type { CommandResult } from "../command-result.ts";
import type { Draft } from "./draft.ts";
import type { SaidOfTest } from "../../input/water-test/entered-test.ts";

export type Answer = Promise<Outcome<CommandResult>>;

export interface EnterTarget {
  /** Unfinished readings are kept here. */
  readonly draftFolder: string;
  /** Whether an unfinished test was on its way to this target. */
  readonly isOwn: (draft: Draft) => boolean;
  /** What is said of the test, asked where somebody can be. */
  readonly said: () => Promise<Outcome<SaidOfTest>>;
  /** Unit of numbers without a letter where nobody says it. */
  readonly usualUnit: TypedLog["unit"];
  readonly keep: (test: SaidOfTest, log: TypedLog) => Answer;
}
