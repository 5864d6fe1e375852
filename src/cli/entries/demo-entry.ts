/** `demo` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";

const usualFolder = "holdband-demo";

export const demoEntry: CommandEntry = {
  name: "demo",
  group: groups.withoutKitchen,
  description: "copy the invented example nights into a folder and write their report",
  arguments: [["[folder]", "a new or empty folder", usualFolder]],
  needs: "a folder",
  options: [["The answer", "--json", "print the result as data"]],
  example: `
Example:
  holdband demo my-demo`,
  load: async () => {
    const { demo } = await import("../demo.ts");
    return ([folder = usualFolder], options, shell) => demo(folder, options, shell);
  },
};
