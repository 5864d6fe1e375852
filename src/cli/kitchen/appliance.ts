/** `appliance`: lists appliances, shows one, adds one or changes what is said of it. */
import { applianceEdit } from "../../input/kitchen/appliance-edit.ts";
import { applianceShape, saidAppliance } from "../../input/kitchen/appliance-options.ts";
import { applianceOf } from "../../input/known-ids.ts";
import { localDay } from "../../input/local-day.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { commandRun } from "../command-run.ts";
import { applianceList } from "./kitchen-lists.ts";
import { sectionCommand } from "./section-command.ts";

export const appliance = commandRun(applianceShape, [], async (words, options, shell) => {
  const today = localDay(shell.now());
  return sectionCommand({
    what: "appliance",
    plural: "appliances",
    folder: options,
    id: words[0],
    said: saidAppliance(options, today),
    edit: applianceEdit(words, options, today),
    entries: ({ appliances }: Kitchen) => appliances,
    find: applianceOf,
    lines: (kitchen, appliances, page) => applianceList({ ...kitchen, appliances }, page),
    shell,
  });
});
