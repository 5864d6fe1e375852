/** Growth by a model in the JSON: for each culture the organisms that have figures, and those that have none. */
import type { CultureGrowth, OrganismGrowth } from "../culture/culture-growth.ts";
import type { SourcedTemperature } from "../culture/culture.ts";

const limitEntry = (limit: SourcedTemperature | null) =>
  limit === null ? null : { celsius: limit.celsius, source: { ...limit.source } };

const organismEntry = (one: OrganismGrowth) => ({
  organism: one.organism,
  meanRate: one.meanRate,
  equivalentHours: one.equivalentHours,
  equivalentHoursInAll: one.equivalentHoursInAll,
  lostToWarmUp: one.lostToWarmUp,
  lostToDisturbances: one.lostToDisturbances,
  limits: {
    minimum: limitEntry(one.limits.minimum),
    optimum: limitEntry(one.limits.optimum),
    maximum: limitEntry(one.limits.maximum),
  },
});

export const growthEntry = ({ culture, organisms, notModelled }: CultureGrowth) => ({
  culture,
  organisms: organisms.map(organismEntry),
  notModelled: notModelled.map(({ organism, because }) => ({ organism, because })),
});
