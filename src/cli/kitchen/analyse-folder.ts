/** An opened kitchen's water tests, read and decided: what `report`, `match` and `next` begin with. */
import { openRawFile } from "../../folder/open-raw-file.ts";
import { analyseKitchen } from "../../kitchen-analysis.ts";
import { nothingRead } from "../../kitchen-analysis/nothing-read.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { usualConfidence, usualShare } from "../../input/check-request.ts";
import type { Shell } from "../command-result.ts";
import { localDay } from "../../input/local-day.ts";
import { startProgress } from "../progress.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";
import type { OpenKitchen } from "./kitchen-folder.ts";
import { applianceOf } from "../../input/known-ids.ts";

/** `appliance`: id of the only one to look at; null for all. */
export const analyseFolder = async (
  { folder, kitchen }: Pick<OpenKitchen, "folder" | "kitchen">,
  appliance: string | null,
  shell: Shell,
): Promise<Outcome<KitchenAnalysis>> => {
  let total = 0;
  const progress = startProgress(shell.progress, () => total, Date.now);
  const said = {
    version: shell.version,
    today: localDay(shell.now()),
    share: usualShare,
    confidence: usualConfidence,
    appliance,
  };
  const analysis = await analyseKitchen(kitchen, said, async (file) => {
    const opened = await openRawFile(folder, file, progress.add);
    if (opened.ok) total += opened.value.bytes;
    return opened;
  }).finally(progress.end);
  if (!analysis.ok) return analysis;
  return nothingRead(analysis.value) ?? analysis;
};

/** Opens the kitchen that was said and analyses it, or only the appliance that was asked for. */
export const analyseAsked = async (
  options: Parameters<typeof folderOf>[0] & { readonly appliance?: string | undefined },
  shell: Shell,
): Promise<Outcome<KitchenAnalysis>> => {
  const opened = await openKitchen(folderOf(options));
  if (!opened.ok) return opened;
  const appliance = options.appliance ?? null;
  const known = appliance === null ? done(null) : applianceOf(opened.value.kitchen, appliance);
  return known.ok ? analyseFolder(opened.value, appliance, shell) : known;
};
