/** `batch` on the command line. */
import { milkBodies, separations, sournesses, troubles } from "../../kitchen/kitchen.ts";
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const batchEntry: CommandEntry = {
  name: "batch",
  group: groups.kitchen,
  description: "log a batch, or change what is said of one; without anything, the log",
  arguments: [["[number]", "the batch's number in the log"]],
  needs: "a batch's number",
  options: [
    ["The batch", "--culture <id>", "which culture"],
    ["The batch", "--appliance <id>", "which appliance it was held in"],
    ["The batch", "--setting <setting>", "what that was set to: 38, a program or a mark"],
    ["The batch", "--container <id>", "what it stood in"],
    ["The batch", "--date <day>", "the day it was set: 2026-11-20 (default: today)"],
    [
      "How it was made",
      "--generation <number>",
      "1: with a fresh starter; 2: with some of that; ...",
    ],
    ["How it was made", "--milk <body>", `${milkBodies.join(", ")} (thin: skimmed or watered)`],
    ["How it was made", "--heated <answer>", "yes or no: was the milk heated first?"],
    ["How it was made", "--starter <part>", "starter as a part of the whole: 5%"],
    ["How it was made", "--hours <time>", "how long it was held: 36"],
    ["How it was made", "--moved <answer>", "yes or no: was it moved or shaken while it set?"],
    ["How it came out", "--separated <word>", `did whey part from it? ${separations.join(", ")}`],
    ["How it came out", "--sourness <word>", sournesses.join(", ")],
    ["How it came out", "--trouble <signs>", `${troubles.join(", ")}; none; may be given again`],
    ["How it came out", "--notes <text>", "what else you want to remember"],
    ["The log", "--remove", "take the batch of that number out of the log"],
    ...kitchenOptions,
  ],
  example: `
Example:
  holdband batch --culture reuteri --appliance cooker --setting 38 --container jars --generation 2
  holdband batch 3 --separated "a little" --trouble none
  holdband batch

Appliance, setting and container need not be given again: they are taken from the last batch of
that culture. "unknown" takes an answer back. Anything pink, orange, fuzzy or off-smelling:
throw all of it away.`,
  load: async () => (await import("../kitchen/batch.ts")).batch,
};
