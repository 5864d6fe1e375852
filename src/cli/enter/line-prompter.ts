/**
 * A terminal for whole lines. Not one prompt after the other as elsewhere:
 * readings are pasted several lines at a time, and none may get lost between
 * two prompts. Arrow up brings back a line that was refused.
 */
import { createInterface } from "node:readline";
import type { Readable, Writable } from "node:stream";
import type { Prompter } from "./prompter.ts";

export interface Terminal {
  readonly input: Readable;
  readonly output: Writable;
  readonly colour: boolean;
}

const dim = 2;
const yellow = 33;

export const linePrompter = ({ input, output, colour }: Terminal): Prompter => {
  const lines = createInterface({ input, output, terminal: true, historySize: 50 });
  const typed: string[] = [];
  let waiting: ((line: string | null) => void) | null = null;
  const give = (line: string | null): void => {
    const take = waiting;
    waiting = null;
    take?.(line);
  };
  let ended = false;
  const end = (): void => {
    if (ended) return;
    ended = true;
    // What comes next must not stand behind the prompt.
    if (waiting !== null) output.write("\n");
    give(null);
  };
  lines.on("line", (line) => {
    if (waiting === null) typed.push(line);
    else give(line);
  });
  lines.on("SIGINT", end);
  lines.on("close", end);
  const write = (text: string, style: number | null): void => {
    const styled = colour && style !== null ? `\u001B[${style}m${text}\u001B[0m` : text;
    output.write(`${styled}\n`);
  };
  return {
    line: (prompt) => {
      const next = typed.shift();
      if (next !== undefined) return Promise.resolve(next);
      if (ended) return Promise.resolve(null);
      lines.setPrompt(prompt);
      lines.prompt();
      return new Promise((resolve) => {
        waiting = resolve;
      });
    },
    say: (text) => write(text, null),
    echo: (text) => write(text, dim),
    warn: (text) => write(text, yellow),
    close: () => lines.close(),
  };
};
