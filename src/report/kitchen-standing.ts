/** Where each culture stands with one appliance: every culture once, so that nothing is said twice. */
import type { ApplianceAdvice, Candidate, Chance, CultureAdvice } from "../advice/advice-types.ts";
import type { Requirement, Verdict } from "../culture/verdict-types.ts";
import type { KitchenAnalysis, SetUpAnalysis } from "../kitchen-analysis-types.ts";
import type { Appliance } from "../kitchen/kitchen.ts";
import { setUpsOf } from "./kitchen-page.ts";
import { setUpKey } from "./wording/set-ups.ts";

/** A tested set-up's verdict. */
export interface Tested {
  readonly requirement: Requirement;
  readonly setUp: SetUpAnalysis;
  readonly verdict: Verdict;
}

/** What nobody tested, and would serve or might. */
export interface Changed {
  readonly requirement: Requirement;
  readonly advice: CultureAdvice & { readonly best: Candidate; readonly chance: Chance };
}

export interface Standing {
  /** Proven by its tests. */
  readonly held: readonly Tested[];
  /** The one change worth making; null where none is. */
  readonly change: Changed | null;
  /** Tested and open. */
  readonly open: readonly Tested[];
  /** Other changes that would serve or might. */
  readonly possible: readonly Changed[];
  /** Not as tested, and too little is known of what else it offers. */
  readonly unknown: readonly Requirement[];
  readonly not: readonly Requirement[];
}

type Place =
  | { readonly kind: "held" | "open"; readonly tested: Tested }
  | { readonly kind: "changed"; readonly changed: Changed }
  | { readonly kind: "unknown" | "not"; readonly requirement: Requirement };

const testedFor = (setUps: readonly SetUpAnalysis[], requirement: Requirement): readonly Tested[] =>
  setUps
    .flatMap((setUp) => {
      const verdict = setUp.verdicts.find(
        ({ requirement: { culture } }) => culture === requirement.culture,
      );
      return verdict === undefined ? [] : [{ requirement, setUp, verdict }];
    })
    .toSorted((a, b) => b.verdict.probability - a.verdict.probability);

/** The one that is advised, where it is among them; else the likeliest. */
const chosen = (tested: readonly Tested[], advice: CultureAdvice | null): Tested | undefined => {
  const best = advice?.best ?? null;
  const advised = tested.find(
    ({ setUp }) => best !== null && setUpKey(setUp.setUp) === setUpKey(best.setUp),
  );
  return advised ?? tested[0];
};

const changedTo = (requirement: Requirement, advice: CultureAdvice | null): Changed | null => {
  if (advice === null || (advice.answer !== "can" && advice.answer !== "may")) return null;
  const { best, chance } = advice;
  if (best === null || chance === null || best.basis === "tested") return null;
  return { requirement, advice: { ...advice, best, chance } };
};

const placeOf = (
  setUps: readonly SetUpAnalysis[],
  advice: CultureAdvice | null,
  requirement: Requirement,
): Place => {
  const tested = testedFor(setUps, requirement);
  const of = (word: Verdict["verdict"]): Tested | undefined =>
    chosen(
      tested.filter(({ verdict }) => verdict.verdict === word),
      advice,
    );
  const held = of("holds");
  if (held !== undefined) return { kind: "held", tested: held };
  const changed = changedTo(requirement, advice);
  if (changed !== null) return { kind: "changed", changed };
  const open = of("unproven");
  if (open !== undefined && advice?.answer !== "cannot") return { kind: "open", tested: open };
  return { kind: advice?.answer === "unknown" ? "unknown" : "not", requirement };
};

/** Cultures that some tested set-up of the kitchen holds. */
const heldAnywhere = ({ setUps }: KitchenAnalysis): ReadonlySet<string> =>
  new Set(
    setUps.flatMap(({ verdicts }) =>
      verdicts.filter(({ verdict }) => verdict === "holds").map((one) => one.requirement.culture),
    ),
  );

/** Worth making where no other appliance is likelier: first for what nothing tested holds, then the likeliest. */
const worthMaking = (
  changes: readonly Changed[],
  analysis: KitchenAnalysis,
): Changed | undefined => {
  const held = heldAnywhere(analysis);
  const rank = ({ requirement, advice }: Changed): number =>
    (held.has(requirement.culture) ? 0 : 2) + (advice.answer === "can" ? 1 : 0);
  return changes
    .filter(({ advice }) => advice.elsewhere === null)
    .toSorted(
      (a, b) => rank(b) - rank(a) || b.advice.chance.probability - a.advice.chance.probability,
    )[0];
};

export const adviceOf = (
  { advice }: KitchenAnalysis,
  { id }: Pick<Appliance, "id">,
): ApplianceAdvice | null => advice.appliances.find(({ appliance }) => appliance === id) ?? null;

/** What the first answers say in full: a tested set-up holds it and is advised as it is. */
export const isSettled = ({ held }: Standing, { culture, answer, best }: CultureAdvice): boolean =>
  answer === "can" &&
  best?.basis === "tested" &&
  held.some(({ requirement }) => requirement.culture === culture);

export const standingOf = (analysis: KitchenAnalysis, appliance: Appliance): Standing => {
  const setUps = setUpsOf(analysis, appliance);
  const advice = adviceOf(analysis, appliance)?.cultures ?? [];
  const places = analysis.requirements.map((requirement) =>
    placeOf(
      setUps,
      advice.find(({ culture }) => culture === requirement.culture) ?? null,
      requirement,
    ),
  );
  const tested = (kind: "held" | "open"): readonly Tested[] =>
    places.flatMap((place) => (place.kind === kind ? [place.tested] : []));
  const left = (kind: "unknown" | "not"): readonly Requirement[] =>
    places.flatMap((place) => (place.kind === kind ? [place.requirement] : []));
  const changes = places.flatMap((place) => (place.kind === "changed" ? [place.changed] : []));
  const change = worthMaking(changes, analysis) ?? null;
  return {
    held: tested("held"),
    change,
    open: tested("open"),
    possible: changes.filter((one) => one !== change),
    unknown: left("unknown"),
    not: left("not"),
  };
};
