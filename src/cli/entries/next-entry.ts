/** `next` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const nextEntry: CommandEntry = {
  name: "next",
  group: groups.kitchen,
  description: "the water test worth doing next, for how long, and what it could settle",
  arguments: [],
  needs: "nothing",
  options: [["The test", "--appliance <id>", "only on this appliance"], ...kitchenOptions],
  example: `
Example:
  holdband next
  holdband next --appliance step-cooker`,
  load: async () => (await import("../kitchen/next.ts")).next,
};
