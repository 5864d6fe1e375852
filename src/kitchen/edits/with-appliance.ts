/** An appliance into kitchen.yaml. */
import type { Outcome } from "../../problem.ts";
import { controlKeys } from "../schema/appliance-schema.ts";
import type { ApplianceEntry, EditOptions } from "./entries.ts";
import { withEntry } from "./entry-edit.ts";
import type { Fields } from "./entry-edit.ts";

/** A control that is given takes the place of any other. */
const oneControl = (entry: ApplianceEntry): Fields => {
  const said = Object.entries(entry).filter(([, value]) => value !== undefined);
  const given = new Set(said.map(([key]) => key));
  const controlled = controlKeys.some((key) => (entry[key] ?? null) !== null);
  const others = controlled ? controlKeys.filter((key) => !given.has(key)) : [];
  return Object.fromEntries([...said, ...others.map((key) => [key, null])]) as Fields;
};

/**
 * Adds an appliance; see `withEntry` for an id that is there already. Another
 * control is refused where a water test or batch names a setting it lacks.
 */
export const withAppliance = (
  text: string,
  file: string,
  id: string,
  entry: ApplianceEntry,
  options?: EditOptions,
): Outcome<string> => withEntry(text, file, "appliances", id, oneControl(entry), options);
