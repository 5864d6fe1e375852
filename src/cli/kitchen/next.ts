/** `next`: the water test worth doing next, and what would settle each open verdict. */
import * as z from "zod";
import { toAdviceContract } from "../../report/advice-contract.ts";
import { toNextTerminal } from "../../report/next-terminal.ts";
import { answered, commandRun } from "../command-run.ts";
import { words } from "../../input/option-readers.ts";
import { analyseAsked } from "./analyse-folder.ts";
import { kitchenShapes } from "../../input/kitchen-shapes.ts";

const shape = z.object({ ...kitchenShapes, appliance: words("an appliance's name") });

export const next = commandRun(shape, [], async (_, options, shell) => {
  const analysis = await analyseAsked(options, shell);
  if (!analysis.ok) return analysis;
  const { colour, ascii, width } = shell;
  const text = toNextTerminal(analysis.value, { colour, ascii, width });
  return answered(options, shell, text, toAdviceContract(analysis.value, "next"));
});
