/** `next`: the water test worth doing next, and what would settle each open verdict. */
import * as z from "zod";
import { done } from "../../problem.ts";
import { toAdviceContract } from "../../report/advice-contract.ts";
import { toNextTerminal } from "../../report/next-terminal.ts";
import { answered, commandRun } from "../command-run.ts";
import { words } from "../option-readers.ts";
import { analyseFolder } from "./analyse-folder.ts";
import { folderOf, kitchenShapes, openKitchen } from "./kitchen-folder.ts";
import { applianceOf } from "./known-ids.ts";

const shape = z.object({ ...kitchenShapes, appliance: words("an appliance's name") });

export const next = commandRun(shape, [], async (_, options, shell) => {
  const opened = await openKitchen(folderOf(options));
  if (!opened.ok) return opened;
  const appliance = options.appliance ?? null;
  const known = appliance === null ? done(null) : applianceOf(opened.value.kitchen, appliance);
  if (!known.ok) return known;
  const analysis = await analyseFolder(opened.value, appliance, shell);
  if (!analysis.ok) return analysis;
  const { colour, ascii, width } = shell;
  const text = toNextTerminal(analysis.value, { colour, ascii, width });
  return answered(options, shell, text, toAdviceContract(analysis.value, "next"));
});
