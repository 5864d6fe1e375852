/** Names that must be in the kitchen: the entry, or a problem with the nearest and all there are. */
import type { Kitchen } from "../kitchen/kitchen.ts";
import { nearestName } from "../nearest-name.ts";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";

const found = <Entry extends { readonly id: string }>(
  what: string,
  entries: readonly Entry[],
  id: string,
): Outcome<Entry> => {
  const entry = entries.find((one) => one.id === id);
  if (entry !== undefined) return done(entry);
  const ids = entries.map((one) => one.id);
  const facts = { what, id, suggestion: nearestName(id, ids), known: ids.join(", ") };
  return failed("not-in-kitchen", facts);
};

export const applianceOf = ({ appliances }: Kitchen, id: string) =>
  found("appliance", appliances, id);
export const containerOf = ({ containers }: Kitchen, id: string) =>
  found("container", containers, id);
export const thermometerOf = ({ thermometers }: Kitchen, id: string) =>
  found("thermometer", thermometers, id);
export const cultureOf = ({ cultures }: Kitchen, id: string) => found("culture", cultures, id);
