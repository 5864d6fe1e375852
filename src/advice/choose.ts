import { setUpKey } from "../kitchen/set-up.ts";
import type { SetUp } from "../kitchen/kitchen.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import type { Answer, Candidate, Chance, Change } from "./advice-types.ts";

/** Candidates this near the best count as good as it: then the smaller change is preferred (our choice). */
const nearEqual = 0.02;

export interface Choice {
  readonly best: Candidate;
  readonly chance: Chance;
  readonly change: Change;
  /** The tested set-up the change is counted from; null where none was tested. */
  readonly from: { readonly setUp: SetUp; readonly chance: Chance } | null;
}

/**
 * The set-up to use for a culture: a tested one that holds; else the likeliest,
 * and among those nearly as likely the smallest change from what was tested: no
 * change, another setting, another container, both.
 *
 * @param at the requirement's place among the chances
 * @returns null without candidates
 */
export const choose = (
  candidates: readonly Candidate[],
  at: number,
  requirement: Requirement,
): Choice | null => {
  if (candidates.length === 0) return null;
  const chance = (one: Candidate): Chance => one.chances[at]!;
  const likeliest = (some: readonly Candidate[]): Candidate => likeliestOf(some, at, requirement);
  const tested = candidates.filter(({ basis }) => basis === "tested");
  const proven = tested.filter((one) => chance(one).verdict === "holds");
  const kept = proven.length > 0 ? proven : tested;
  const start = kept.length === 0 ? null : likeliest(kept);
  const chosen = (best: Candidate, from: Candidate | null): Choice => ({
    best,
    chance: chance(best),
    change: changeTo(best, from),
    from: from && { setUp: from.setUp, chance: chance(from) },
  });
  if (start !== null && proven.length > 0) return chosen(start, start);
  const top = highestOf(candidates, at);
  const good = candidates.filter((one) => chance(one).probability >= top - nearEqual);
  const smallest = good.reduce((least, one) => Math.min(least, effort(one, start)), Infinity);
  const best = likeliest(good.filter((one) => effort(one, start) === smallest));
  return chosen(best, best.basis === "tested" ? best : start);
};

/** Probabilities closer than this are one: the level nearest the middle of the window then decides. */
const sameProbability = 1e-3;

const likeliestOf = (
  some: readonly Candidate[],
  at: number,
  requirement: Requirement,
): Candidate => {
  const top = highestOf(some, at);
  return some
    .filter((one) => one.chances[at]!.probability >= top - sameProbability)
    .reduce((a, b) => (offCentre(b, requirement) < offCentre(a, requirement) ? b : a));
};

const highestOf = (some: readonly Candidate[], at: number): number =>
  some.reduce((most, one) => Math.max(most, one.chances[at]!.probability), 0);

const offCentre = ({ level }: Candidate, { low, high }: Requirement): number =>
  level === null ? Infinity : Math.abs(level.mean - (low + high) / 2);

const changes: readonly Change[] = ["none", "setting", "container", "setting and container"];

const changeTo = (one: Candidate, from: Candidate | null): Change => {
  if (from === null) return "first test";
  return one.basis === "tested" ? "none" : changes[effort(one, from)]!;
};

const effort = (one: Candidate, from: Candidate | null): number => {
  if (from === null || one.basis === "tested") return 0;
  const otherSetting =
    setUpKey({ ...one.setUp, container: "" }) !== setUpKey({ ...from.setUp, container: "" });
  return Number(otherSetting) + 2 * Number(one.setUp.container !== from.setUp.container);
};

/** Below this an appliance is not recommended for a culture (our choice): likelier not than so. */
export const leastProbability = 0.5;

/** What the likeliest set-up's chance comes to. */
export const answerOf = ({ best, chance }: Choice, confidence: number): Answer => {
  const { probability, verdict } = chance;
  if (verdict === "holds") return "can";
  if (probability >= leastProbability) return "may";
  const known = best.basis !== "assumed";
  return known && probability <= 1 - confidence ? "cannot" : "unknown";
};
