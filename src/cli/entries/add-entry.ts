/** `add` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry, OptionEntry } from "./command-entry.ts";
import { fileOptions } from "./file-options.ts";
import { kitchenOptions } from "./kitchen-options.ts";

/** What is said of a water test, whether its readings come from a file or by hand. */
export const testOptions: readonly OptionEntry[] = [
  ["The set-up", "--appliance <id>", "which appliance stood there"],
  ["The set-up", "--setting <setting>", "what it was set to: 38, a program or a mark"],
  ["The set-up", "--container <id>", "what the water stood in"],
  ["The test", "--fill <text>", 'how much was in it: "2 L", "two thirds"'],
  ["The test", "--room <low..high>", "room temperatures while it ran: 17..25"],
  ["The test", "--notes <text>", "what else you want to remember"],
  ["The test", "--name <id>", "the test's name (default: made from set-up and date)"],
];

export const addEntry: CommandEntry = {
  name: "add",
  group: groups.kitchen,
  description: "a water test into the kitchen: the logger's file as it came, and what it was",
  arguments: [["<files...>", "logger files; several are loggers that ran together"]],
  needs: "at least one logger's file",
  options: [
    ...testOptions,
    [
      "The probes",
      "--probe <name=role>",
      "where a probe sat: food, bath or room; may be given again",
    ],
    [
      "The probes",
      "--thermometer <id>",
      "which thermometer measured; NAME=ID for one probe, may be given again",
    ],
    [
      "The file",
      "--starts <time>",
      'first reading, where the file has no date: "2026-10-03 22:10"; FILE=TIME for one of several',
    ],
    ...fileOptions,
    ...kitchenOptions,
  ],
  example: `
Example:
  holdband add night.csv --appliance step-cooker --setting 38 --container jars --thermometer logger
  holdband add jar.csv bath.csv --appliance bath --setting 41 --container jars --probe Bath=bath`,
  load: async () => (await import("../kitchen/add.ts")).add,
};
