/** `appliance`: lists appliances, shows one, adds one or changes what is said of it. */
import type { ApplianceEntry } from "../../kitchen/edits/entries.ts";
import { withAppliance } from "../../kitchen/edits/with-appliance.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { controlKeys } from "../../kitchen/schema/appliance-schema.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { commandRun } from "../command-run.ts";
import { notToCome } from "../local-day.ts";
import { applianceShape, saidAppliance } from "./appliance-options.ts";
import { applianceList } from "./kitchen-lists.ts";
import { applianceOf } from "./known-ids.ts";
import { sectionCommand } from "./section-command.ts";

const incomplete = (said: ApplianceEntry, id: string): Outcome<never> | null => {
  if (said.kind === undefined) {
    return failed("option-missing", { option: "--kind", why: `${id} is new to this kitchen` });
  }
  if (controlKeys.some((key) => said[key] !== undefined)) return null;
  const option = "--control fixed, --programs, --steps or --marks";
  const why = `${id} is new to this kitchen, and a verdict is about one setting`;
  return failed("option-missing", { option, why });
};

export const appliance = commandRun(applianceShape, [], async (words, options, shell) => {
  const { moved } = options;
  const toCome = moved === undefined ? null : notToCome("--moved", moved, shell.now());
  return (
    toCome ??
    sectionCommand({
      what: "appliance",
      plural: "appliances",
      folder: options,
      id: words[0],
      said: saidAppliance(options),
      entries: ({ appliances }: Kitchen) => appliances,
      find: applianceOf,
      incomplete,
      put: withAppliance,
      lines: (kitchen, appliances, page) => applianceList({ ...kitchen, appliances }, page),
      shell,
    })
  );
});
