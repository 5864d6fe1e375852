/** How a command is made: the shape of its options and what it does; the same care around each. */
import type * as z from "zod";
import { done } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { failure, jsonText } from "./command-result.ts";
import type { CommandResult, Shell } from "./command-result.ts";
import type { CommandRun } from "./entries/command-entry.ts";
import { givenTwice, readOptions } from "../input/read-options.ts";

export type Run<Options> = (
  words: readonly string[],
  options: Options,
  shell: Shell,
) => Promise<Outcome<CommandResult>>;

/** `repeatable`: keys of the options that may be given again. */
export const commandRun =
  <Options>(
    shape: z.ZodType<Options>,
    repeatable: readonly string[],
    run: Run<Options>,
  ): CommandRun =>
  async (words, typed, shell) => {
    const json = typed["json"] === true;
    const twice = givenTwice(typed, new Set(repeatable));
    if (twice !== null && !twice.ok) return failure(twice.problem, shell.version, json);
    const options = readOptions(shape, typed);
    // A run that asks nobody where the answer is data: a program reads it.
    const result = options.ok
      ? await run(words, options.value, json ? { ...shell, asks: false } : shell)
      : options;
    return result.ok ? result.value : failure(result.problem, shell.version, json);
  };

/** A command's answer: `data` with --json, else `text`. */
export const answered = (
  { json }: { readonly json: boolean },
  shell: Shell,
  text: string,
  data: Readonly<Record<string, unknown>>,
): Outcome<CommandResult> => {
  const out = json ? jsonText({ holdband: shell.version, contract: 1, ...data }) : text;
  return done({ out: out.trimEnd(), err: "", exitCode: 0 });
};
