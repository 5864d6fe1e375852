/** `rename` and `remove` on the command line. */
import { groups } from "./command-entry.ts";
import type { ArgumentEntry, CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

const section: ArgumentEntry = ["<section>", "thermometer, appliance, container, culture or test"];

export const renameEntry: CommandEntry = {
  name: "rename",
  group: groups.kitchen,
  description: "give something in the kitchen another name",
  arguments: [section, ["<old>", "its name now"], ["<new>", "its new name"]],
  needs: "a section, the name now and the new name",
  options: [
    ["The kitchen", "--everywhere", "also in the tests and batches that name it"],
    ...kitchenOptions,
  ],
  example: `
Example:
  holdband rename appliance cooker old-cooker --everywhere`,
  load: async () => (await import("../kitchen/rename.ts")).rename,
};

export const removeEntry: CommandEntry = {
  name: "remove",
  group: groups.kitchen,
  description: "take something out of the kitchen, where no test or batch needs it",
  arguments: [section, ["<id>", "its name"]],
  needs: "a section and a name",
  options: kitchenOptions,
  example: `
Example:
  holdband remove container basin

Readings stay in the folder readings/; only what the kitchen says is changed.`,
  load: async () => (await import("../kitchen/remove.ts")).remove,
};
