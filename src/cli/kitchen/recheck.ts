/** `recheck`: baseline against newest test of each set-up, in the light of the log of batches. */
import * as z from "zod";
import type { RecheckAdvice } from "../../advice/recheck-types.ts";
import { done } from "../../problem.ts";
import { toRecheckContract } from "../../report/recheck-contract.ts";
import { toRecheckTerminal } from "../../report/recheck-terminal.ts";
import { answered, commandRun } from "../command-run.ts";
import { flag, words } from "../../input/option-readers.ts";
import { analyseAsked } from "./analyse-folder.ts";
import { kitchenShapes } from "../../input/kitchen-shapes.ts";

const shape = z.object({
  ...kitchenShapes,
  appliance: words("an appliance's name"),
  strict: flag,
});

const calls = ({ rechecks, due }: RecheckAdvice): boolean =>
  due.length > 0 || rechecks.some(({ word }) => word === "moved");

export const recheck = commandRun(shape, [], async (_, options, shell) => {
  const analysis = await analyseAsked(options, shell);
  if (!analysis.ok) return analysis;
  const { colour, ascii, width } = shell;
  const text = toRecheckTerminal(analysis.value, { colour, ascii, width });
  const answer = answered(options, shell, text, toRecheckContract(analysis.value));
  const exitCode = options.strict && calls(analysis.value.advice.recheck) ? 1 : 0;
  return answer.ok ? done({ ...answer.value, exitCode }) : answer;
});
