/** `match` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const matchEntry: CommandEntry = {
  name: "match",
  group: groups.kitchen,
  description: "which appliance for which culture, and the setting and container",
  arguments: [],
  needs: "nothing",
  options: [
    [
      "The cultures",
      "--culture <id>",
      "only these run at the same time; may be given again (default: all)",
    ],
    ...kitchenOptions,
    ["The answer", "--strict", "exit code 1 where a culture has no place that would hold it"],
  ],
  example: `
Example:
  holdband match
  holdband match --culture reuteri --culture yoghurt`,
  load: async () => (await import("../kitchen/match.ts")).match,
};
