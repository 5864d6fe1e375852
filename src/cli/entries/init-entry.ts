/** `init` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";

export const initEntry: CommandEntry = {
  name: "init",
  group: groups.kitchen,
  description: "start a kitchen folder: one text file and room for readings and reports",
  arguments: [["<folder>", "a new folder, or one without a kitchen in it"]],
  needs: "a folder for the kitchen",
  options: [["The answer", "--json", "print the result as data"]],
  example: `
Example:
  holdband init my-kitchen`,
  load: async () => (await import("../kitchen/init.ts")).init,
};
