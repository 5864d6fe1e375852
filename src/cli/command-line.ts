/**
 * What may be typed: commands, options, help. Parsing only; nothing here
 * knows what the options mean, so that --help starts fast.
 */
import { Command, CommanderError, Option } from "commander";
import { cultures } from "../culture/catalogue.ts";
import type { Problem } from "../problem.ts";
import { usageProblem } from "./usage-problem.ts";

/** Options as typed: every value of each option in order, flags as true. */
export type TypedOptions = Readonly<Record<string, readonly string[] | boolean>>;

export type ParsedLine =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "problem"; readonly problem: Problem }
  | { readonly kind: "check"; readonly files: readonly string[]; readonly options: TypedOptions }
  | { readonly kind: "demo"; readonly folder: string; readonly options: TypedOptions };

const collect = (value: string, before: readonly string[] | undefined): readonly string[] => [
  ...(before ?? []),
  value,
];

const valued = (flags: string, description: string): Option =>
  new Option(flags, description).argParser(collect);

const checkOptions: readonly (readonly [group: string, flags: string, description: string])[] = [
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
  ["The file", "--column <name>", "only this column is a temperature; may be given again"],
  ["The file", "--unit <unit>", "unit of a file that names none: C or F"],
  ["The file", "--date-order <order>", "day-first (dmy) or month-first (mdy)"],
  ["The file", "--decimal <mark>", "comma or point"],
  ["The file", "--interval <time>", "spacing of a file without times: 5s, 1min"],
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

const checkExample = `
Cultures:
${cultureLines()}

Example:
  holdband check night.csv --culture yoghurt --thermometer-accuracy 0.5 --report night.html
  holdband check night.csv --low 37C --high 39C --hours 36

Exit codes: 0 done; 1 done, not held, with --strict; 2 bad usage or unreadable file.`;

const checkCommand = (): Command => {
  const command = new Command("check")
    .description("read a logger's file of a water test and say which culture it can hold")
    .argument("<files...>", "logger files (CSV or text), as they came")
    .addHelpText("after", checkExample);
  for (const [group, flags, description] of checkOptions) {
    const option = flags.includes("<")
      ? valued(flags, description)
      : new Option(flags, description);
    command.addOption(option.helpGroup(`${group}:`));
  }
  return command;
};

const demoCommand = (): Command =>
  new Command("demo")
    .description("copy the invented example nights into a folder and write their report")
    .argument("[folder]", "a new or empty folder", "holdband-demo")
    .option("--json", "print the result as data")
    .addHelpText("after", "\nExample:\n  holdband demo my-demo");

const mainExample = `
Example:
  holdband check night.csv --low 37C --high 39C --hours 36 --report night.html
  holdband demo`;

/** Reads a command line (without node and script). Never prints, never exits. */
export const parseCommandLine = (line: readonly string[], version: string): ParsedLine => {
  let shown = "";
  let parsed: ParsedLine = { kind: "text", text: "" };
  const show = (text: string): void => {
    shown += text;
  };
  const program = new Command("holdband")
    .description("Reads an overnight water test and says which culture an appliance can hold.")
    .version(version)
    .addHelpText("after", mainExample);
  const check = checkCommand().action((files: string[], options: TypedOptions) => {
    parsed = { kind: "check", files, options };
  });
  const demo = demoCommand().action((folder: string, options: TypedOptions) => {
    parsed = { kind: "demo", folder, options };
  });
  for (const command of [program, check, demo]) {
    command.exitOverride().configureOutput({ writeOut: show, writeErr: () => undefined });
  }
  program.addCommand(check).addCommand(demo);
  if (line.length === 0) return { kind: "text", text: program.helpInformation() + mainExample };
  try {
    program.parse(line, { from: "user" });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode === 0) return { kind: "text", text: shown.trimEnd() };
    const known = line[0] === "check" || line[0] === "demo";
    return {
      kind: "problem",
      problem: usageProblem(error, known ? `holdband ${line[0]}` : "holdband"),
    };
  }
  return parsed;
};
