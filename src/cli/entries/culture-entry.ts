/** `culture` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const cultureEntry: CommandEntry = {
  name: "culture",
  group: groups.kitchen,
  description: "a culture you keep, from the catalogue or your own; without a name, all of both",
  arguments: [["[id]", "the culture's name: one of the catalogue's, or your own"]],
  needs: "a culture's name",
  options: [
    ["Its window", "--low <temperature>", "lower edge: 38, 38C or 100.4F"],
    ["Its window", "--high <temperature>", "upper edge"],
    ["Its window", "--target <temperature>", "where it does best"],
    ["Its window", "--ceiling <temperature>", "never above this"],
    ["Its window", "--hours <time>", "how long it stays in: 36, 36h"],
    ["Its window", "--name <text>", "what you call it"],
    ...kitchenOptions,
  ],
  example: `
Example:
  holdband culture yoghurt
  holdband culture kefir --hours 30
  holdband culture my-blend --low 37 --high 39 --target 38 --ceiling 43 --hours 24
  holdband culture`,
  load: async () => (await import("../kitchen/culture.ts")).culture,
};
