import { decide } from "../culture/verdict.ts";
import { futureRun, runScatter } from "../culture/run-to-run.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import type { AdviceInput, AdviceTest, DecidedSetUp } from "./advice-input.ts";
import type { Recheck } from "./recheck-types.ts";
import type { HeldTest } from "./response.ts";

/**
 * The input without what an appliance was before it moved: where a recheck shows
 * a move, that appliance's tests from before its newest one tell of what is
 * gone, and a mean of both would be neither. Tests of unknown date stay.
 */
export const sinceMoves = (input: AdviceInput, rechecks: readonly Recheck[]): AdviceInput => {
  const moved = rechecks.filter(({ word }) => word === "moved");
  if (moved.length === 0) return input;
  const tests = input.tests.filter((test) => !isBefore(test, moved));
  const kept = new Set(tests.map(({ id }) => id));
  const setUps = input.setUps.flatMap((one): DecidedSetUp[] => {
    const testIds = one.testIds.filter((id) => kept.has(id));
    if (testIds.length === one.testIds.length) return [one];
    const newest = tests.find(({ id }) => id === testIds.at(-1));
    return newest === undefined || newest.settled === null
      ? []
      : [byNewest(one, { ...newest, settled: newest.settled }, input)];
  });
  return { ...input, tests, setUps };
};

/** Older than the newest test of a set-up of its appliance that moved. */
const isBefore = ({ setUp, startedAt }: AdviceTest, moved: readonly Recheck[]): boolean =>
  moved.some(
    (one) =>
      one.setUp.appliance === setUp.appliance &&
      startedAt !== null &&
      one.newest.startedAt !== null &&
      startedAt < one.newest.startedAt,
  );

/** The set-up decided on its newest test alone; the move is no scatter of its runs. */
const byNewest = (
  one: DecidedSetUp,
  { id, settled }: HeldTest,
  { requirements, confidence, tests }: AdviceInput,
): DecidedSetUp => {
  const earlier = tests.flatMap((test) =>
    test.id !== id && test.settled !== null && setUpKey(test.setUp) === setUpKey(one.setUp)
      ? [test.settled.level]
      : [],
  );
  const scatter = runScatter([earlier]);
  const runToRun = futureRun(scatter, 1);
  const evidence = { ...settled.evidence, runToRun, confidence };
  return {
    ...one,
    testIds: [id],
    mean: settled.level,
    runToRun: runToRun.value,
    scatter,
    verdicts: requirements.map((requirement) => decide(requirement, evidence)),
  };
};
