/** Readings through a pipe: all lines or none. */
import type { Outcome } from "../../problem.ts";
import { pipedReadings } from "../../readings/typed/piped-readings.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import type { Shell } from "../command-result.ts";
import type { EnterOptions } from "./enter-shape.ts";
import type { EnterTarget } from "./enter-target.ts";
import type { SaidOfTest } from "./entered-test.ts";
import { pipedText } from "./piped-input.ts";
import { startLog } from "./start-log.ts";
import { wallNow } from "./wall-now.ts";

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
  const { firstDay, probes } = startLog(test, options, usualUnit);
  const now = wallNow(shell.now());
  return pipedReadings(text.value, {
    probes,
    unit: options.unit ?? null,
    usualUnit,
    firstDay,
    now,
  });
};
