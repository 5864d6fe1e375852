import { setUpKey } from "../kitchen/set-up.ts";
import type { Obstacle } from "./advice-types.ts";
import type { KnownAppliance } from "./candidates.ts";
import { scatterPrior } from "./response-prior.ts";
import type { HeldTest } from "./response.ts";

/** Runs of one set-up usually stay within so many standard deviations of each other (an assumption). */
const usualRange = 5;

/** Set-ups whose tests lie further apart than runs usually do: something else changed between them. */
export const testsDisagree = ({ response: { tests } }: KnownAppliance): readonly Obstacle[] => {
  const groups = new Map<string, HeldTest[]>();
  for (const test of tests.filter(({ settled }) => !settled.tooLittle)) {
    const key = setUpKey(test.setUp) + test.settled.place;
    groups.set(key, [...(groups.get(key) ?? []), test]);
  }
  return [...groups.values()].flatMap((group): Obstacle[] => {
    const levels = group.map(({ settled }) => settled.level);
    const spread = Math.max(...levels) - Math.min(...levels);
    return spread > usualRange * scatterPrior.standardDeviation
      ? [{ code: "tests-disagree", setUp: group[0]!.setUp, spread }]
      : [];
  });
};
