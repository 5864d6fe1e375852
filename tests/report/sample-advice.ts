/**
 * Invented advice for the invented kitchen: plausible figures by plain formulas,
 * made without the program's own advice. It checks how advice is shown, never
 * whether it is right.
 */
import type {
  ApplianceAdvice,
  Candidate,
  CultureAdvice,
  KitchenAdvice,
  MatchPlace,
  Obstacle,
} from "../../src/advice/advice-types.ts";
import type { NextTest, OpenVerdict } from "../../src/advice/next-types.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import type { Appliance, SetUp } from "../../src/kitchen/kitchen.ts";
import { candidatesOf, near } from "./sample-candidates.ts";
import type { Given, Known } from "./sample-candidates.ts";
import { curveOf, pointsOf, termsOf } from "./sample-responses.ts";

/** Best of all, but a tested one where it is nearly as good. */
const bestFor = (all: readonly Candidate[], index: number): Candidate =>
  all.reduce((best, one) => {
    const lead =
      (one.chances[index]?.probability ?? 0) + (one.basis === "tested" ? 0.02 : 0) >
      (best.chances[index]?.probability ?? 0) + (best.basis === "tested" ? 0.02 : 0);
    return lead ? one : best;
  });

const obstaclesFor = (best: Candidate, asked: Requirement, tested: boolean): Obstacle[] => {
  if (!tested) return [{ code: "not-tested" }];
  const { setUp } = best;
  const mean = best.level?.mean ?? 0;
  if (mean > asked.high)
    return [{ code: "too-warm-at-lowest", setUp, mean, by: mean - asked.high }];
  if (mean < asked.low) return [{ code: "too-cold-at-highest", setUp, mean, by: asked.low - mean }];
  return [];
};

const changeOf = (best: SetUp, from: SetUp | undefined): CultureAdvice["change"] => {
  if (from === undefined) return "first test";
  const setting = JSON.stringify(best.setting) !== JSON.stringify(from.setting);
  const container = best.container !== from.container;
  if (setting && container) return "setting and container";
  return setting ? "setting" : container ? "container" : "none";
};

const cultureAdvice = (
  { tested }: Known,
  all: readonly Candidate[],
  asked: Requirement,
  index: number,
): CultureAdvice => {
  const best = bestFor(all, index);
  const chance = best.chances[index] ?? null;
  const likely = chance?.probability ?? 0;
  const proven = all.filter(({ basis }) => basis === "tested");
  const from = proven.length === 0 ? null : bestFor(proven, index);
  const low = tested.length === 0 ? "unknown" : "cannot";
  return {
    culture: asked.culture,
    answer: likely >= 0.95 ? "can" : likely >= 0.5 ? "may" : low,
    best,
    chance,
    change: changeOf(best.setUp, from?.setUp),
    from: from === null ? null : { setUp: from.setUp, chance: from.chances[index]! },
    steadyRoom:
      likely >= 0.5 && likely < 0.95
        ? { low: 20, high: 22, probability: near(likely + 0.08) }
        : null,
    obstacles: likely >= 0.95 ? [] : obstaclesFor(best, asked, tested.length > 0),
    elsewhere: null,
  };
};

const applianceAdvice = (given: Given, own: Appliance) => {
  const tested = given.setUps.filter(({ setUp }) => setUp.appliance === own.id);
  const known = { ...given, own, tested };
  const all = candidatesOf(known);
  return {
    appliance: own.id,
    tests: pointsOf(known),
    terms: termsOf(known),
    scatter: { prior: 0.3, now: tested.some(({ testIds }) => testIds.length > 1) ? 0.22 : 0.3 },
    curves: given.kitchen.containers.map(({ id }) => curveOf(id, all)),
    candidates: all,
    cultures: given.requirements.map((asked, at) => cultureAdvice(known, all, asked, at)),
  } satisfies ApplianceAdvice;
};

/** The likeliest other appliance, where this one cannot or may not. */
const withElsewhere = (
  { appliance, cultures, ...rest }: ApplianceAdvice,
  all: readonly ApplianceAdvice[],
): ApplianceAdvice => ({
  ...rest,
  appliance,
  cultures: cultures.map((one, at) => {
    const other = all
      .filter((each) => each.appliance !== appliance)
      .flatMap((each) => each.cultures[at] ?? [])
      .toSorted((a, b) => (b.chance?.probability ?? 0) - (a.chance?.probability ?? 0))[0];
    const { best, chance } = other ?? {};
    if (one.answer === "can" || best == null || chance == null || chance.probability < 0.5)
      return one;
    const { setUp, basis } = best;
    return {
      ...one,
      elsewhere: { appliance: setUp.appliance, setUp, probability: chance.probability, basis },
    };
  }),
});

/** The first appliance that can and is free; each in turn. */
const placesOf = (
  { requirements }: Given,
  all: readonly ApplianceAdvice[],
): readonly MatchPlace[] => {
  const taken = new Set<string>();
  return requirements.map(({ culture }, at) => {
    const offers = all
      .flatMap(({ appliance, cultures }) => {
        const { best, chance } = cultures[at] ?? {};
        return best == null || chance == null ? [] : [{ appliance, candidate: best, chance }];
      })
      .toSorted((a, b) => b.chance.probability - a.chance.probability);
    const able = offers.filter(({ chance }) => chance.probability >= 0.5);
    const placed = able.find(({ appliance }) => !taken.has(appliance)) ?? null;
    if (placed !== null) taken.add(placed.appliance);
    const why = placed !== null ? null : able.length > 0 ? "none-left" : "none-can";
    return { culture, placed, why, alone: offers[0] ?? null };
  });
};

const nextFor = ({ kitchen, requirements, setUps }: Given): readonly NextTest[] =>
  setUps.slice(-1).map(({ setUp, verdicts }) => ({
    setUp,
    basis: "tested",
    hours: 36,
    daytime: true,
    interval: { loggerMinutes: 2, byHandMinutes: 45, swingMinutes: 30 },
    thermometer:
      kitchen.thermometers[1] === undefined
        ? null
        : { id: kitchen.thermometers[1].id, standardUncertainty: 0.12, word: "good" },
    gain: 0.8,
    served: 0.4,
    outcomes: requirements.map(({ culture }, at) => ({
      culture,
      now: verdicts[at]?.probability ?? 0.3,
      holds: at === 0 ? 0.55 : 0,
      misses: at === 0 ? 0.25 : 1,
    })),
  }));

const openOf = ({ setUps }: Given): readonly OpenVerdict[] =>
  setUps.flatMap(({ setUp, verdicts }) =>
    verdicts
      .filter(({ verdict }) => verdict === "unproven")
      .map(({ requirement, probability }) => ({
        setUp,
        culture: requirement.culture,
        probability,
        doubt: {
          source: "run to run" as const,
          standardUncertainty: 0.3,
          from: "assumed" as const,
          share: 0.61,
        },
        heatEnded: null,
        without: { verdict: "holds" as const, probability: 0.97 },
      })),
  );

export const adviceFor = (given: Given): KitchenAdvice => {
  const own = given.kitchen.appliances
    .filter(({ id }) => given.appliance === null || id === given.appliance)
    .map((one) => applianceAdvice(given, one));
  const appliances = own.map((one) => withElsewhere(one, own));
  const places = placesOf(given, appliances);
  const placed = places.flatMap((one) => one.placed?.chance.probability ?? []);
  return {
    appliances,
    containers: given.kitchen.containers.map(({ id }, at) => ({
      container: id,
      shareLost: {
        value: 0.02 + at * 0.01,
        standardUncertainty: 0.014,
        from: at === 0 ? "measured" : "assumed",
        testIds: at === 0 ? given.setUps.flatMap(({ testIds }) => testIds).slice(0, 1) : [],
      },
      lagMinutes: {
        value: 25 + at * 10,
        standardUncertainty: at === 0 ? 1.2 : 12,
        from: at === 0 ? "measured" : "assumed",
        testIds: at === 0 ? given.setUps.flatMap(({ testIds }) => testIds).slice(0, 1) : [],
      },
    })),
    match: { places, weakest: placed.length === 0 ? null : Math.min(...placed), floor: 0.5 },
    next: { tests: nextFor(given), open: openOf(given) },
    recheck: { rechecks: [], due: [], findings: [] },
    floor: 0.5,
  };
};
