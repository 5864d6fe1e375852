import type { GrowthLimits } from "./culture.ts";
import { growthOverHold } from "./growth-over-hold.ts";
import type { GrowthCourse, GrowthOverHold } from "./growth-over-hold.ts";
import { cardinalTemperatures } from "./growth-rate.ts";
import type { Requirement } from "./verdict-types.ts";

/** What a model makes of a night for one organism, with the limits it was asked with. */
export interface OrganismGrowth extends GrowthOverHold {
  readonly limits: GrowthLimits;
}

/** An organism the model cannot be asked about. */
export interface UnmodelledOrganism {
  readonly organism: string;
  /** A limit was not found, or the optimum lies too low between the others for the model. */
  readonly because: "limit not known" | "limits do not fit the model";
}

/** What a model makes of a night for the organisms of one culture. */
export interface CultureGrowth {
  /** Its id. */
  readonly culture: string;
  readonly organisms: readonly OrganismGrowth[];
  readonly notModelled: readonly UnmodelledOrganism[];
}

/**
 * Growth over a night for each culture asked about, in their order; none for a
 * culture whose organisms are not said. Rates are those of growth-over-hold.ts,
 * and no surer. Linear in the readings; an organism of several cultures is
 * reckoned once. Without a hold no organism has figures.
 */
export const growthOfCultures = (
  requirements: readonly Requirement[],
  course: GrowthCourse,
): readonly CultureGrowth[] => {
  const known = new Map<GrowthLimits, GrowthOverHold | null>();
  const figures = (limits: GrowthLimits): GrowthOverHold | null => {
    const before = known.get(limits);
    if (before !== undefined) return before;
    const found = growthOverHold(course, limits);
    known.set(limits, found);
    return found;
  };
  return requirements.flatMap(({ culture, growth = [] }) => {
    if (growth.length === 0) return [];
    const organisms = growth.flatMap((limits) => {
      const found = figures(limits);
      return found === null ? [] : [{ ...found, limits }];
    });
    return [{ culture, organisms, notModelled: growth.flatMap(unmodelled) }];
  });
};

const unmodelled = (limits: GrowthLimits): readonly UnmodelledOrganism[] => {
  if (cardinalTemperatures(limits) !== null) return [];
  const { organism, minimum, optimum, maximum } = limits;
  const missing = [minimum, optimum, maximum].includes(null);
  return [{ organism, because: missing ? "limit not known" : "limits do not fit the model" }];
};
