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
  const likeliest = (some: readonly Candidate[]): Candidate =>
    some.reduce((a, b) => (isBetter(chance(b), b, chance(a), a, requirement) ? b : a));
  const tested = candidates.filter(({ basis }) => basis === "tested");
  const start = tested.length === 0 ? null : likeliest(tested);
  const from = start === null ? null : { setUp: start.setUp, chance: chance(start) };
  if (start !== null && chance(start).verdict === "holds") {
    return { best: start, chance: chance(start), change: "none", from };
  }
  const top = chance(likeliest(candidates)).probability;
  const good = candidates.filter((one) => chance(one).probability >= top - nearEqual);
  const smallest = Math.min(...good.map((one) => effort(one, start)));
  const best = likeliest(good.filter((one) => effort(one, start) === smallest));
  return { best, chance: chance(best), change: changeTo(best, start), from };
};

/** Probabilities closer than this are one: the level in the middle of the window then decides. */
const sameProbability = 1e-3;

const isBetter = (
  a: Chance,
  one: Candidate,
  b: Chance,
  other: Candidate,
  requirement: Requirement,
): boolean => {
  const gain = a.probability - b.probability;
  if (Math.abs(gain) > sameProbability) return gain > 0;
  return offCentre(one, requirement) < offCentre(other, requirement);
};

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
