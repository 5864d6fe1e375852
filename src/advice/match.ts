import type { Requirement } from "../culture/verdict-types.ts";
import { assign } from "../stats/assignment.ts";
import type { Candidate, Chance, Match, MatchPlace } from "./advice-types.ts";

/** An appliance with the set-up it would use for each requirement. */
export interface MatchedAppliance {
  readonly appliance: string;
  /** One per requirement, in their order; null where it offers none. */
  readonly best: readonly ({ readonly candidate: Candidate; readonly chance: Chance } | null)[];
}

export interface MatchInput {
  readonly requirements: readonly Requirement[];
  /** In the kitchen's order. */
  readonly appliances: readonly MatchedAppliance[];
  /** No culture is placed where it is less likely than this. */
  readonly floor: number;
}

type Place = NonNullable<MatchPlace["alone"]>;

/** What each appliance would do for the requirement; null where it offers nothing. */
const placesFor = (at: number, { appliances }: MatchInput): readonly (Place | null)[] =>
  appliances.map(({ appliance, best }) => {
    const one = best[at] ?? null;
    return one && { appliance, ...one };
  });

const isLikelier = (one: Place, other: Place): boolean => {
  const gain = one.chance.probability - other.chance.probability;
  if (gain !== 0) return gain > 0;
  return one.candidate.basis === "tested" && other.candidate.basis !== "tested";
};

const likeliest = (places: readonly Place[]): Place | null => {
  const [first, ...others] = places;
  if (first === undefined) return null;
  return others.reduce((best, one) => (isLikelier(one, best) ? one : best), first);
};

const whyNot = (places: readonly Place[], floor: number): MatchPlace["why"] => {
  if (places.some(({ chance }) => chance.probability >= floor)) return "none-left";
  return places.every(({ candidate }) => candidate.basis === "assumed")
    ? "nothing-known"
    : "none-can";
};

/**
 * Which appliance for which culture when all of them run at the same time, one
 * appliance for a culture and one culture for an appliance: as many cultures
 * as can be placed; then the weakest probability as high as can be; then their
 * sum; among equals the cultures and appliances named first.
 *
 * A culture without a place is told why: `none-left` where another was placed
 * in the appliances that could, `nothing-known` where no candidate rests on a
 * test and none is likely enough, `none-can` otherwise.
 */
export const matchCultures = (input: MatchInput): Match => {
  const offers = input.requirements.map((_, at) => placesFor(at, input));
  const columns = assign(
    offers.map((row) => row.map((one) => one?.chance.probability ?? null)),
    input.floor,
  );
  const places = input.requirements.map(({ culture }, at): MatchPlace => {
    const column = columns[at] ?? null;
    const placed = column === null ? null : (offers[at]![column] ?? null);
    const open = offers[at]!.filter((one) => one !== null);
    const why = placed === null ? whyNot(open, input.floor) : null;
    return { culture, placed, why, alone: likeliest(open) };
  });
  return { places, weakest: weakestOf(places), floor: input.floor };
};

const weakestOf = (places: readonly MatchPlace[]): number | null =>
  places.reduce<number | null>((weakest, { placed }) => {
    if (placed === null) return weakest;
    return Math.min(weakest ?? Infinity, placed.chance.probability);
  }, null);
