/** Turns the command-line library's own complaints into problems in our voice. */
import type { CommanderError } from "commander";
import type { Problem } from "../problem.ts";

const expectations: Readonly<Record<string, string>> = {
  "commander.unknownOption": "an option that exists",
  "commander.unknownCommand": 'a command such as "check" or "demo"',
  "commander.missingArgument": "at least one logger's file",
  "commander.optionMissingArgument": "a value after the option",
  "commander.excessArguments": "nothing more after the folder",
};

/** The part of the library's message that names what was typed. */
const quoted = (message: string): string => /'([^']*)'/.exec(message)?.[1] ?? "";

const foundIn = (error: CommanderError): string => {
  if (error.code === "commander.missingArgument") return "none";
  if (error.code === "commander.excessArguments") return "more";
  const name = quoted(error.message).split(" ")[0] ?? "";
  return error.code === "commander.optionMissingArgument" ? `${name} alone` : name;
};

export const usageProblem = (error: CommanderError, command: string): Problem => ({
  code: "usage",
  facts: {
    expected: expectations[error.code] ?? "a command and its options",
    found: foundIn(error),
    suggestion: /\(Did you mean (?:one of )?(.*?)\?\)/.exec(error.message)?.[1] ?? "",
    command,
  },
});
