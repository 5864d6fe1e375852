import { decide } from "../culture/verdict.ts";
import { futureRun, runScatter } from "../culture/run-to-run.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import type { AdviceInput, AdviceTest, DecidedSetUp } from "./advice-input.ts";
import type { Recheck } from "./recheck-types.ts";
import type { HeldTest } from "./response.ts";

/** Where one test alone speaks of a move, it may itself be the odd one: older tests still count this much (our choice). */
const olderCount = 0.25;

/**
 * The input in the light of moves: where a recheck shows one, the appliance's
 * tests from before it tell of what is gone. They are left out once two tests
 * agree on what it is now; while there is only one, they count a quarter, so
 * that the advice leans to the newest and stays in doubt. Tests of unknown date
 * stay as they are.
 */
export const sinceMoves = (input: AdviceInput, rechecks: readonly Recheck[]): AdviceInput => {
  const moves = rechecks.filter(({ word }) => word === "moved").map((one) => moveOf(one, input));
  if (moves.length === 0) return input;
  const tests = input.tests.flatMap((test) => {
    const move = moves.find((one) => isBefore(test, one));
    if (move === undefined) return [test];
    if (move.repeated || test.settled === null) return [];
    return [{ ...test, settled: { ...test.settled, weight: olderCount } }];
  });
  return { ...input, tests, setUps: setUpsSince(input, tests, moves) };
};

interface Move {
  readonly recheck: Recheck;
  /** Start of the first test that shows it, ms; null where not known. */
  readonly since: number | null;
  /** A second test agrees with the newest. */
  readonly repeated: boolean;
}

/** Two newest tests that agree with each other and not with the baseline. */
const moveOf = (recheck: Recheck, { tests }: AdviceInput): Move => {
  const { chart, level, newest } = recheck;
  const before = chart.points.at(-2)!;
  const reach = (level.high - level.low) / 2;
  const repeated =
    chart.points.length > 2 &&
    Math.abs(before.mean - level.baseline) > reach &&
    Math.abs(before.mean - level.now) <= reach;
  const second = tests.find(({ id }) => id === before.testId);
  return {
    recheck,
    since: repeated ? (second?.startedAt ?? null) : newest.startedAt,
    repeated,
  };
};

const isBefore = ({ setUp, startedAt }: AdviceTest, { recheck, since }: Move): boolean =>
  recheck.setUp.appliance === setUp.appliance &&
  startedAt !== null &&
  since !== null &&
  startedAt < since;

/** The moved set-up by its newest test; others of the appliance only while their tests count. */
const setUpsSince = (
  input: AdviceInput,
  tests: readonly AdviceTest[],
  moves: readonly Move[],
): readonly DecidedSetUp[] =>
  input.setUps.flatMap((one): readonly DecidedSetUp[] => {
    const move = moves.find(({ recheck }) => setUpKey(recheck.setUp) === setUpKey(one.setUp));
    const kept = one.testIds.filter((id) => tests.some((test) => test.id === id));
    if (move === undefined) return kept.length === 0 ? [] : [one];
    const newest = input.tests.find(({ id }) => id === move.recheck.newest.testId);
    return newest === undefined || newest.settled === null
      ? []
      : [byNewest(one, { ...newest, settled: newest.settled }, input, move)];
  });

/** Decided on the newest test alone, the move being no scatter of its runs; `holds` only once it was repeated. */
const byNewest = (
  one: DecidedSetUp,
  { id, settled }: HeldTest,
  { requirements, confidence }: AdviceInput,
  { repeated }: Move,
): DecidedSetUp => {
  const scatter = runScatter([]);
  const runToRun = futureRun(scatter, 1);
  const evidence = { ...settled.evidence, runToRun, confidence };
  const verdicts = requirements.map((requirement) => {
    const verdict = decide(requirement, evidence);
    const open = verdict.verdict === "holds" && !repeated;
    return open ? { ...verdict, verdict: "unproven" as const } : verdict;
  });
  return {
    ...one,
    testIds: [id],
    mean: settled.level,
    runToRun: runToRun.value,
    scatter,
    verdicts,
  };
};
