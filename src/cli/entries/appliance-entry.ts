/** `appliance` on the command line. */
import { applianceKinds } from "../../kitchen/kitchen.ts";
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const applianceEntry: CommandEntry = {
  name: "appliance",
  group: groups.kitchen,
  description: "an appliance and what can be set on it; without a name, those there are",
  arguments: [["[id]", "the appliance's name in the kitchen"]],
  needs: "an appliance's name",
  options: [
    ["The appliance", "--kind <kind>", applianceKinds.join(", ")],
    ["The appliance", "--name <text>", "what you call it"],
    ["The appliance", "--thermostat <answer>", "yes, no or unknown: does it switch by itself?"],
    ["Its control, one of", "--control <fixed>", "fixed: on and off, nothing to set"],
    ["Its control, one of", "--programs <names>", "names of its programs: warm,yoghurt"],
    ["Its control, one of", "--steps <low..high>", "temperatures it can be set to: 30..45"],
    ["Its control, one of", "--marks <marks>", "marks of its dial, in order: low,1,2,high"],
    ["Its control, one of", "--step <size>", "size of one of the --steps: 0.5 (default 1)"],
    ["The appliance", "--moved <day>", "when it was last moved or repaired: 2026-05-01"],
    ...kitchenOptions,
  ],
  example: `
Example:
  holdband appliance step-cooker --kind cooker --steps 30..45 --step 0.5 --thermostat yes
  holdband appliance box --kind "warming box" --marks low,1,2,high
  holdband appliance`,
  load: async () => (await import("../kitchen/appliance.ts")).appliance,
};
