/**
 * Reads what was typed by the table of commands. Parsing only; nothing here
 * knows what the options mean, so that --help starts fast.
 */
import { Command, CommanderError, Option } from "commander";
import type { Argument } from "commander";
import type { Problem } from "../problem.ts";
import type { CommandEntry } from "./entries/command-entry.ts";
import type { TypedOptions } from "../input/typed-options.ts";
import { spreadRepeated } from "./repeated-values.ts";
import { usageProblem } from "./usage-problem.ts";

export type ParsedLine =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "problem"; readonly problem: Problem }
  | {
      readonly kind: "command";
      readonly entry: CommandEntry;
      readonly words: readonly string[];
      readonly options: TypedOptions;
    };

const collect = (value: string, before: readonly string[] | undefined): readonly string[] => [
  ...(before ?? []),
  value,
];

const optionOf = (flags: string, description: string): Option => {
  // Several values are parted before; to the library each has its own flag.
  const option = new Option(flags, description);
  option.variadic = false;
  return flags.includes("<") ? option.argParser(collect) : option;
};

const commandOf = (entry: CommandEntry): Command => {
  const command = new Command(entry.name)
    .description(entry.description)
    .helpGroup(entry.group)
    .addHelpText("after", entry.example);
  for (const [form, description, byDefault] of entry.arguments) {
    command.argument(form, description, byDefault);
  }
  for (const [group, flags, description] of entry.options) {
    command.addOption(optionOf(flags, description).helpGroup(`${group}:`));
  }
  return command;
};

const mainExample = `
Example:
  holdband check night.csv --low 37C --high 39C --hours 36 --report night.html
  holdband init my-kitchen
  holdband demo`;

/** Every command has options; saying so in each line would only push its description aside. */
const shortTerm = (command: Command): string =>
  [command.name(), ...command.registeredArguments.map(argumentTerm)].join(" ");

const argumentTerm = (argument: Argument): string => {
  const name = `${argument.name()}${argument.variadic ? "..." : ""}`;
  return argument.required ? `<${name}>` : `[${name}]`;
};

const programOf = (version: string): Command =>
  new Command("holdband")
    .description("Reads overnight water tests and says which culture an appliance can hold.")
    .version(version)
    .usage("<command> [options]")
    .configureHelp({ subcommandTerm: shortTerm })
    .addHelpText("after", mainExample);

/** Reads a command line (without node and script). Never prints, never exits. */
export const parseCommandLine = (
  line: readonly string[],
  version: string,
  table: readonly CommandEntry[],
): ParsedLine => {
  let shown = "";
  let parsed: ParsedLine = { kind: "text", text: "" };
  const ready = (command: Command): Command =>
    command.exitOverride().configureOutput({
      writeOut: (text) => {
        shown += text;
      },
      writeErr: () => undefined,
    });
  const program = ready(programOf(version));
  for (const entry of table) {
    const command = ready(commandOf(entry));
    command.action(() => {
      parsed = {
        kind: "command",
        entry,
        words: command.processedArgs.flat().filter((word) => word !== undefined),
        options: command.opts(),
      };
    });
    program.addCommand(command);
  }
  if (line.length === 0) return { kind: "text", text: program.helpInformation() + mainExample };
  const entry = table.find(({ name }) => name === line[0]);
  try {
    program.parse(spreadRepeated(line, entry?.options ?? []), { from: "user" });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    const words = program.commands.find((one) => one.name() === entry?.name)?.args ?? [];
    if (error.exitCode === 0) return { kind: "text", text: shown.trimEnd() };
    return { kind: "problem", problem: usageProblem(error, entry ?? null, words) };
  }
  return parsed;
};
