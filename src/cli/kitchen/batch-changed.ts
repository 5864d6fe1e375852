/** What `batch 3 --...` changes in a batch; its set-up is settled with its appliance's control. */
import type { BatchEntry } from "../../kitchen/edits/entries.ts";
import type { Batch, Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Shell } from "../command-result.ts";
import { ofBatch } from "./batch-asked.ts";
import { saidOfBatch } from "./batch-options.ts";
import type { BatchOptions } from "./batch-options.ts";
import { typedSetting } from "./batch-taken.ts";
import { plainNumber } from "./plain-number.ts";
import { askSetUp } from "./set-up-asked.ts";

/** In another appliance the setting must be said anew, or asked for. */
const setUpChange = async (
  kitchen: Kitchen,
  batch: Batch,
  { appliance, setting, container }: BatchOptions,
  shell: Shell,
): Promise<Outcome<BatchEntry>> => {
  if ([appliance, setting, container].every((one) => one === undefined)) return done({});
  const stays = appliance === undefined || appliance === batch.appliance;
  const was = stays ? (typedSetting(batch.setting, kitchen.shownUnit) ?? undefined) : undefined;
  const said = {
    appliance: appliance ?? batch.appliance,
    setting: setting ?? was,
    container: container ?? batch.container,
  };
  const settled = await askSetUp(kitchen, said, shell, ofBatch);
  if (!settled.ok) return settled;
  const now = settled.value;
  const written = now.setting === null ? null : plainNumber(now.setting);
  return done({
    appliance: now.appliance,
    // As it stands in the file, where nobody spoke of it.
    ...(stays && setting === undefined ? {} : { setting: written }),
    container: now.container,
  });
};

/** Only what was said, and what follows from it. */
export const batchChange = async (
  kitchen: Kitchen,
  batch: Batch,
  options: BatchOptions,
  shell: Shell,
): Promise<Outcome<BatchEntry>> => {
  const setUp = await setUpChange(kitchen, batch, options, shell);
  return setUp.ok ? done({ ...setUp.value, ...saidOfBatch(options) }) : setUp;
};
