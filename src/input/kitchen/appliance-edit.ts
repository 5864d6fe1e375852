/** An appliance into the kitchen, or what is said of it changed. */
import type { ApplianceEntry } from "../../kitchen/edits/entries.ts";
import { withAppliance } from "../../kitchen/edits/with-appliance.ts";
import { controlKeys } from "../../kitchen/schema/appliance-schema.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { saidAppliance } from "./appliance-options.ts";
import type { ApplianceOptions } from "./appliance-options.ts";
import type { KitchenEdit } from "./edit-kitchen-text.ts";
import { sectionEdit } from "./section-edit.ts";

const incomplete = (said: ApplianceEntry, id: string): Outcome<never> | null => {
  if (said.kind === undefined) {
    return failed("option-missing", { option: "--kind", why: `${id} is new to this kitchen` });
  }
  if (controlKeys.some((key) => said[key] !== undefined)) return null;
  const option = "--control fixed, --programs, --steps or --marks";
  const why = `${id} is new to this kitchen, and a verdict is about one setting`;
  return failed("option-missing", { option, why });
};

/** `words`: the appliance's id. A new one needs its kind and its control. */
export const applianceEdit = (
  [id]: readonly string[],
  options: ApplianceOptions,
  today: string,
): Outcome<KitchenEdit> =>
  sectionEdit({
    what: "appliance",
    id,
    said: saidAppliance(options, today),
    entries: ({ appliances }) => appliances,
    incomplete,
    put: withAppliance,
  });
