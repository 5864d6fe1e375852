/** `report` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const reportEntry: CommandEntry = {
  name: "report",
  group: groups.kitchen,
  description: "which set-up holds which culture, over all water tests of the kitchen",
  arguments: [],
  needs: "nothing",
  options: [
    ["The report", "--appliance <id>", "only this appliance"],
    ["The report", "--report <file>", "where to write it (default: reports/kitchen.html)"],
    ...kitchenOptions,
    ["The answer", "--strict", "exit code 1 where a set-up or a test is not in order"],
  ],
  example: `
Example:
  holdband report
  holdband report --appliance step-cooker`,
  load: async () => (await import("../kitchen/report.ts")).report,
};
