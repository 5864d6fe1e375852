/** What is changed in a batch of the log; its set-up is settled with its appliance's control. */
import type { BatchEntry } from "../../kitchen/edits/entries.ts";
import type { Batch, Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { cultureOf } from "../known-ids.ts";
import { plainNumber } from "../plain-number.ts";
import { ofBatch, settledSetUp } from "../set-up.ts";
import type { SaidSetUp } from "../set-up.ts";
import { saidOfBatch } from "./batch-options.ts";
import type { BatchOptions } from "./batch-options.ts";
import { typedSetting } from "./batch-taken.ts";

const staysIn = (batch: Batch, { appliance }: BatchOptions): boolean =>
  appliance === undefined || appliance === batch.appliance;

/** As said, else as it was; null where nothing of it was said. In another appliance the setting must be said anew. */
export const changedSetUp = (
  { shownUnit }: Kitchen,
  batch: Batch,
  options: BatchOptions,
): SaidSetUp | null => {
  const { appliance, setting, container } = options;
  if ([appliance, setting, container].every((one) => one === undefined)) return null;
  const was = staysIn(batch, options)
    ? (typedSetting(batch.setting, shownUnit) ?? undefined)
    : undefined;
  return {
    appliance: appliance ?? batch.appliance,
    setting: setting ?? was,
    container: container ?? batch.container,
  };
};

const setUpChange = (
  kitchen: Kitchen,
  batch: Batch,
  options: BatchOptions,
): Outcome<BatchEntry> => {
  const said = changedSetUp(kitchen, batch, options);
  if (said === null) return done({});
  const settled = settledSetUp(kitchen, said, ofBatch);
  if (!settled.ok) return settled;
  const { appliance, setting, container } = settled.value;
  // As it stands in the file, where nobody spoke of it.
  const isKept = staysIn(batch, options) && options.setting === undefined;
  const written = setting === null ? null : plainNumber(setting);
  return done({ appliance, ...(isKept ? {} : { setting: written }), container });
};

/** Only what was said, and what follows from it. Fails at what is not in the kitchen, or is missing. */
export const batchChange = (
  kitchen: Kitchen,
  batch: Batch,
  options: BatchOptions,
): Outcome<BatchEntry> => {
  const culture = options.culture === undefined ? null : cultureOf(kitchen, options.culture);
  if (culture !== null && !culture.ok) return culture;
  const setUp = setUpChange(kitchen, batch, options);
  return setUp.ok ? done({ ...setUp.value, ...saidOfBatch(options) }) : setUp;
};
