/** `check` on the command line. */
import { cultures } from "../../culture/catalogue.ts";
import { groups } from "./command-entry.ts";
import type { CommandEntry, OptionEntry } from "./command-entry.ts";
import { fileOptions } from "./file-options.ts";

const options: readonly OptionEntry[] = [
  ["The window", "--culture <id>", "a culture from the catalogue; may be given again"],
  ["The window", "--low <temperature>", "lower edge: 38, 38C or 100.4F"],
  ["The window", "--high <temperature>", "upper edge"],
  ["The window", "--ceiling <temperature>", "never above this"],
  ["The window", "--hours <time>", "how long the culture stays in: 36, 36h"],
  ["The window", "--share <part>", "part of the hours that must lie inside (default 0.95)"],
  ["The window", "--confidence <part>", "how sure `holds` must be (default 0.95)"],
  ["The thermometer", "--thermometer-accuracy <a>", "good to +-A, as its maker says: 0.5 or 0.9F"],
  ["The thermometer", "--correction <c>", "what to add to each reading, from your own check"],
  ["The thermometer", "--correction-uncertainty <u>", "standard uncertainty of that correction"],
  ["The kitchen", "--room <low..high>", "room temperatures a batch may meet: 17..25"],
  ["The kitchen", "--run-to-run <s>", "standard deviation from one run to the next (0 allowed)"],
  ["The file", "--probe <name=role>", "where a probe sat: food, bath or room; may be given again"],
  ...fileOptions,
  ["The answer", "--report <file>", "write the report, one HTML file"],
  ["The answer", "--json", "print the result as data"],
  ["The answer", "--strict", "exit code 1 on anything but `holds`"],
];

/** Ids in lines of three: short enough for any terminal. */
const cultureLines = (): string => {
  const ids = cultures.map(({ id }) => id.padEnd(20));
  const starts = ids.map((_, at) => at).filter((at) => at % 3 === 0);
  return starts.map((at) => `  ${ids.slice(at, at + 3).join("")}`.trimEnd()).join("\n");
};

export const checkEntry: CommandEntry = {
  name: "check",
  group: groups.withoutKitchen,
  description: "read a logger's file of a water test and say which culture it can hold",
  arguments: [["<files...>", "logger files (CSV or text), as they came"]],
  needs: "at least one logger's file",
  options,
  example: `
Example:
  holdband check night.csv --culture yoghurt --thermometer-accuracy 0.5 --report night.html
  holdband check night.csv --low 37C --high 39C --hours 36

Cultures:
${cultureLines()}

Exit codes: 0 done; 1 done, not held, with --strict; 2 bad usage or unreadable file.`,
  load: async () => (await import("../check.ts")).check,
};
