/** `recheck` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const recheckEntry: CommandEntry = {
  name: "recheck",
  group: groups.kitchen,
  description: "whether a set-up is still what it was, and what else makes batches separate",
  arguments: [],
  needs: "nothing",
  options: [
    ["The set-ups", "--appliance <id>", "only those of this appliance"],
    ...kitchenOptions,
    ["The answer", "--strict", "exit code 1 where something moved or a water test is due"],
  ],
  example: `
Example:
  holdband recheck
  holdband recheck --appliance step-cooker --strict`,
  load: async () => (await import("../kitchen/recheck.ts")).recheck,
};
