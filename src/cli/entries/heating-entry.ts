/** `heating` on the command line. */
import { heatingTargets } from "../../culture/heating-targets.ts";
import { groups } from "./command-entry.ts";
import type { CommandEntry, OptionEntry } from "./command-entry.ts";
import { fileOptions } from "./file-options.ts";

const options: readonly OptionEntry[] = [
  ["The heating", "--step <name>", "a usual heating step, listed below (default: milk-90)"],
  ["The heating", "--target <temperature>", "a target of your own: 90, 90C or 194F"],
  ["The heating", "--minutes <time>", "how long without a break: 10, 10min, 15s"],
  [
    "The heating",
    "--z <difference>",
    "degC that make heat ten times as effective (step's, else 10)",
  ],
  ["The cool-down", "--culture <id>", "cool below this culture's ceiling, then into its window"],
  ["The cool-down", "--until <temperature>", "cool below this instead: 43, 43C or 109F"],
  ["The cool-down", "--room <low..high>", "where the pot cools, the room or a bath: 18..24"],
  ["The thermometer", "--thermometer <id>", "one of the kitchen's, with its checks"],
  ["The thermometer", "--thermometer-accuracy <a>", "good to +-A, as its maker says: 0.5 or 0.9F"],
  ["The thermometer", "--correction <c>", "what to add to each reading, from your own check"],
  ["The thermometer", "--correction-uncertainty <u>", "standard uncertainty of that correction"],
  ["The file", "--probe <name>", "the probe in the milk, where the file has several"],
  ...fileOptions,
  ["The kitchen", "--kitchen <folder>", "the kitchen's folder (default: this one, if it is one)"],
  ["The answer", "--json", "print the result as data"],
  ["The answer", "--strict", "exit code 1 on anything but `holds`"],
];

const timeText = (minutes: number): string =>
  minutes < 1 ? `${minutes * 60} s` : `${minutes} min`;

const stepLines = (): string =>
  heatingTargets
    .map(
      ({ from, celsius, minutes }) =>
        `  ${from.name.padEnd(12)}${celsius} degC for ${timeText(minutes)}`,
    )
    .join("\n");

export const heatingEntry: CommandEntry = {
  name: "heating",
  group: groups.withoutKitchen,
  description: "read a log of heated milk: hot enough, long enough, and when cool enough",
  arguments: [["<file>", "the logger's file (CSV or text), as it came"]],
  needs: "a logger's file",
  options,
  example: `
Example:
  holdband heating pot.csv --culture yoghurt --thermometer-accuracy 0.5
  holdband heating pot.csv --target 85C --minutes 30 --until 43C --room 18..24

Steps:
${stepLines()}

It tells what the log shows. Local food code and licensed practice decide.
Exit codes: 0 done; 1 done, not held, with --strict; 2 bad usage or unreadable file.`,
  load: async () => (await import("../heating.ts")).heating,
};
