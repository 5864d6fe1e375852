/** `enter` on the command line. */
import { testOptions } from "./add-entry.ts";
import { groups } from "./command-entry.ts";
import type { CommandEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

export const enterEntry: CommandEntry = {
  name: "enter",
  group: groups.kitchen,
  description: "a water test into the kitchen from readings typed by hand, or through a pipe",
  arguments: [],
  needs: "",
  options: [
    ...testOptions,
    [
      "The probes",
      "--probe <name=role>",
      "where a probe sat: food, bath or room; may be given again (default: Jar=food)",
    ],
    [
      "The probes",
      "--thermometer <id>",
      "which thermometer was read; NAME=ID for one probe, may be given again",
    ],
    ["The readings", "--unit <unit>", "unit of numbers without a letter: C or F"],
    [
      "The readings",
      "--date <day>",
      "day of the first reading: 2026-10-03 (default: the last night)",
    ],
    ["The readings", "--out <file>", "only write them as CSV, into no kitchen"],
    ...kitchenOptions,
  ],
  example: `
One reading on each line: a time, then a temperature for each probe.
  22:30 41.2        10:30 pm 106.2F        2026-10-03 22:30 41,2
  now 41.2          +15 41.2 (minutes after the last)        22:30 41.2 - (one not read)
Past midnight the day changes by itself. # begins a comment, ! confirms what looks odd.
Clocks are taken as on the wall; over a summer-time change say the same time as the clock.

Example:
  holdband enter --appliance step-cooker --setting 38 --container jars --thermometer pen
  holdband enter --appliance bath --setting 41 --container jars < night.txt
  printf '22:30 41.2\\n7:00 41.0\\n' | holdband enter --out night.csv`,
  load: async () => (await import("../enter/enter.ts")).enter,
};
