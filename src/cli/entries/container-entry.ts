/** `container` on the command line. */
import { containerStands } from "../../kitchen/kitchen.ts";
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const containerEntry: CommandEntry = {
  name: "container",
  group: groups.kitchen,
  description: "what the food stands in, and how; without a name, those there are",
  arguments: [["[id]", "the container's name in the kitchen"]],
  needs: "a container's name",
  options: [
    ["The container", "--stands <how>", containerStands.join(", ")],
    ["The container", "--name <text>", "what you call it"],
    ["The container", "--volume <litres>", "of one vessel: 0.5L, 250 mL"],
    ["The container", "--count <number>", "how many vessels stand in the appliance: 6"],
    ["The container", "--changed <day>", "when jars, lid or amount last changed: 2026-05-01"],
    ...kitchenOptions,
  ],
  example: `
Example:
  holdband container jars --stands "jars in water" --volume 0.5L --count 6
  holdband container`,
  load: async () => (await import("../kitchen/container.ts")).container,
};
