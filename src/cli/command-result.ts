/** What every command hands back: texts and an exit code; only the shell prints. */
import { problemText } from "../problem.ts";
import type { Problem } from "../problem.ts";

/** 0 done; 1 done, and --strict asked for failure on anything but `holds`; 2 bad usage or unreadable input. */
export type ExitCode = 0 | 1 | 2;

export interface CommandResult {
  /** For standard output, without the last line end. */
  readonly out: string;
  /** For standard error, without the last line end. */
  readonly err: string;
  readonly exitCode: ExitCode;
}

/** What the shell knows and the commands may use. */
export interface Shell {
  readonly version: string;
  /** Where the installed package lies, for the demo's readings. */
  readonly packageRoot: URL;
  readonly colour: boolean;
  readonly ascii: boolean;
  readonly width: number;
  /** Shows one passing line; null where nobody watches. */
  readonly progress: ((line: string) => void) | null;
  /** Whether somebody sits at the terminal who can be asked. */
  readonly asks: boolean;
  readonly now: () => Date;
  /** What comes through a pipe, where it is not the process's own. */
  readonly input?: AsyncIterable<Uint8Array>;
}

export const jsonText = (value: unknown): string => JSON.stringify(value, null, 2);

/** A problem as a result: one sentence, and with --json the same as data. */
export const failure = (problem: Problem, version: string, json: boolean): CommandResult => {
  const text = problemText(problem);
  const data = { holdband: version, contract: 1, problem: { code: problem.code, text } };
  return { out: json ? jsonText(data) : "", err: text, exitCode: 2 };
};
