import { futureRun, runScatter } from "../culture/run-to-run.ts";
import { decide } from "../culture/verdict.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import { equivalence } from "../stats/equivalence.ts";
import type { AdviceInput } from "./advice-input.ts";
import type { TestPair } from "./recheck-level.ts";
import type { RecheckCulture, RecheckDifference, RecheckWord } from "./recheck-types.ts";

/** Half the way to the window's edge: a move within it leaves a culture where it was (our choice). */
const boundShare = 0.5;
/** Level of the equivalence test. */
const alpha = 0.05;

/** Whether a difference is more than chance, by its 95 % interval. */
export const isMove = ({ low, high }: RecheckDifference): boolean => low > 0 || high < 0;

/** Each culture in the light of a difference between two tests. */
export const recheckCultures = (
  pair: TestPair,
  level: RecheckDifference,
  { requirements, confidence }: AdviceInput,
): readonly RecheckCulture[] =>
  requirements.map((requirement) => {
    const margin = marginTo(requirement, pair);
    return {
      culture: requirement.culture,
      margin,
      word: wordFor(level, margin),
      now: newestAlone(requirement, pair, confidence),
    };
  });

/** From the baseline's band to the nearer edge, degC; negative outside. */
const marginTo = ({ low, high }: Requirement, { baseline }: TestPair): number => {
  const { band } = baseline.settled.evidence.hold;
  return Math.min(band.low - low, high - band.high);
};

/**
 * `not moved` where two one-sided tests show the difference to lie within half
 * the margin, however surely there is one; `moved` where it is more than chance.
 */
const wordFor = (level: RecheckDifference, margin: number): RecheckWord => {
  if (margin > 0 && equivalence(level, boundShare * margin, alpha).equivalent) return "not moved";
  return isMove(level) ? "moved" : "cannot tell";
};

const newestAlone = (
  requirement: Requirement,
  { newest, earlier }: TestPair,
  confidence: number,
): RecheckCulture["now"] => {
  // A set-up that moved does not scatter so: the move is no part of it.
  const runToRun = futureRun(runScatter([earlier]), 1);
  const evidence = { ...newest.settled.evidence, runToRun, confidence };
  const { verdict, probability } = decide(requirement, evidence);
  return { verdict, probability };
};
