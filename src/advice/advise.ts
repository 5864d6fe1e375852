import type { KitchenAdvice } from "./advice-types.ts";

/** Below this probability an appliance is not recommended for a culture (our choice): likelier not than so. */
export const leastProbability = 0.5;

export const adviseKitchen = (): KitchenAdvice => ({
  appliances: [],
  containers: [],
  match: { places: [], weakest: null, floor: leastProbability },
  next: { tests: [], open: [] },
  floor: leastProbability,
});
