/** What one command is to the command line: its words for the help, and where its code is loaded from. */
import type { TypedOptions } from "../../input/typed-options.ts";
import type { CommandResult, Shell } from "../command-result.ts";

/**
 * Group in the help, flags, description. A value in <> may be given again;
 * `<numbers...>` also takes several numbers after one flag.
 */
export type OptionEntry = readonly [group: string, flags: string, description: string];

/** `<needed>`, `[not needed]` or `<several...>`, its description, and what stands in for one not given. */
export type ArgumentEntry = readonly [form: string, description: string, byDefault?: string];

/** `words` are the arguments in their order, several or none. */
export type CommandRun = (
  words: readonly string[],
  options: TypedOptions,
  shell: Shell,
) => Promise<CommandResult>;

export interface CommandEntry {
  readonly name: string;
  /** Heading it stands under in the help. */
  readonly group: string;
  readonly description: string;
  readonly arguments: readonly ArgumentEntry[];
  /** What was expected where a needed argument is missing: "at least one logger's file". */
  readonly needs: string;
  readonly options: readonly OptionEntry[];
  /** Below the options: a real example first. */
  readonly example: string;
  /** Loads the code when the command is run, so that --help stays fast. */
  readonly load: () => Promise<CommandRun>;
}

export const groups = {
  withoutKitchen: "Logger files without a kitchen:",
  kitchen: "The kitchen:",
} as const;
