/** Turns the command-line library's own complaints into problems in our voice. */
import type { CommanderError } from "commander";
import type { Problem } from "../problem.ts";
import type { CommandEntry } from "./entries/command-entry.ts";

const expectations: Readonly<Record<string, string>> = {
  "commander.unknownOption": "an option that exists",
  "commander.unknownCommand": 'a command such as "check" or "init"',
  "commander.optionMissingArgument": "a value after the option",
};

/** The part of the library's message that names what was typed. */
const quoted = (message: string): string => /'([^']*)'/.exec(message)?.[1] ?? "";

const bareName = (form: string): string => form.replaceAll(/[<>[\].]/g, "");

/** "none", or of several that are needed the first that is missing. */
const missingIn = (error: CommanderError, entry: CommandEntry | null): string => {
  const name = quoted(error.message);
  const [first] = entry?.arguments ?? [];
  return first === undefined || bareName(first[0]) === name ? "none" : `no ${name}`;
};

const foundIn = (
  error: CommanderError,
  entry: CommandEntry | null,
  words: readonly string[],
): string => {
  if (error.code === "commander.missingArgument") return missingIn(error, entry);
  if (error.code === "commander.excessArguments") {
    const first = words[entry?.arguments.length ?? 0] ?? "more";
    return `"${first}" (words that belong together go in quotes)`;
  }
  const name = quoted(error.message).split(" ")[0] ?? "";
  return error.code === "commander.optionMissingArgument" ? `${name} alone` : name;
};

const expectedBy = ({ code }: CommanderError, entry: CommandEntry | null): string => {
  if (code === "commander.missingArgument") return entry?.needs ?? "an argument";
  if (code === "commander.excessArguments") {
    const last = entry?.arguments.at(-1)?.[0];
    return last === undefined ? "nothing more" : `nothing more after the ${bareName(last)}`;
  }
  return expectations[code] ?? "a command and its options";
};

/** `words`: the arguments found on the line. */
export const usageProblem = (
  error: CommanderError,
  entry: CommandEntry | null,
  words: readonly string[],
): Problem => ({
  code: "usage",
  facts: {
    expected: expectedBy(error, entry),
    found: foundIn(error, entry, words),
    suggestion: /\(Did you mean (?:one of )?(.*?)\?\)/.exec(error.message)?.[1] ?? "",
    command: entry === null ? "holdband" : `holdband ${entry.name}`,
  },
});
