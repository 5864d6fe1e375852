/** Readings through a pipe: all lines or none. */
import type { Outcome } from "../../problem.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import type { Shell } from "../command-result.ts";
import type { EnterOptions } from "./enter-shape.ts";
import type { EnterTarget } from "./enter-target.ts";
import type { SaidOfTest } from "../../input/water-test/entered-test.ts";
import { pipedText } from "./piped-input.ts";
import { wholeLog } from "../../input/water-test/start-log.ts";
import { wallNow } from "../../input/wall-now.ts";

export const pipedLog = async (
  test: SaidOfTest,
  options: EnterOptions,
  { usualUnit }: EnterTarget,
  shell: Shell,
): Promise<Outcome<TypedLog>> => {
  // With --json, or with the output in a file, nobody is asked but somebody may sit there.
  if (shell.input === undefined && process.stdin.isTTY)
    shell.progress?.("One reading on each line, such as 22:30 41.2; Ctrl-D ends.\n");
  const text = await pipedText(shell.input ?? process.stdin);
  if (!text.ok) return text;
  return wholeLog(text.value, test, options, usualUnit, wallNow(shell.now()));
};
