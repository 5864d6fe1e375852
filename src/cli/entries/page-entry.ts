/** `page` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";

const usualFile = "holdband.html";

export const pageEntry: CommandEntry = {
  name: "page",
  group: groups.withoutKitchen,
  description: "write one HTML file that does all this in a browser, offline",
  arguments: [["[file]", "where to write it; an earlier page is replaced", usualFile]],
  needs: "a file to write",
  options: [["The answer", "--json", "print the result as data"]],
  example: `
Example:
  holdband page my-page.html

Open the file in a browser: drop a logger's file on it or type readings, keep a
kitchen there, save its report. It asks nothing of any network. A kitchen.yaml
saved there is the same as the command line's.`,
  load: async () => {
    const { page } = await import("../page.ts");
    return ([file = usualFile], options, shell) => page(file)([], options, shell);
  },
};
