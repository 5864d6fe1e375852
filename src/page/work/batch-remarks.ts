/** What is to be said once a batch was logged or changed, as `batch` says it. */
import { batchRepeatable, batchShape } from "../../input/kitchen/batch-options.ts";
import { takenText } from "../../input/kitchen/batch-taken-text.ts";
import { newBatch } from "../../input/kitchen/new-batch.ts";
import { readTyped } from "../../input/read-options.ts";
import { dueOfSetUp } from "../../kitchen-analysis/due-tests.ts";
import type { OpenTestFile } from "../../kitchen-analysis.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { dueText, usualText } from "../../report/wording/recheck-due.ts";
import { spoiltBatchText } from "../../report/wording/spoilt-batch.ts";
import { plainWriting } from "../../report/writing.ts";
import type { FormValues } from "../protocol.ts";

/** What nobody said of a new batch and was taken from the kitchen as it stood before. */
export const takenRemarks = (
  before: Kitchen,
  options: FormValues,
  today: string,
): readonly string[] => {
  const read = readTyped(batchShape, batchRepeatable, options);
  const batch = read.ok ? newBatch(before, read.value, today) : read;
  return batch.ok ? takenText(batch.value) : [];
};

/** `number`: of the batch, from 1. To throw away first, then what was taken, then tests that are due. */
export const batchRemarks = async (
  kitchen: Kitchen,
  number: number,
  taken: readonly string[],
  today: string,
  open: OpenTestFile,
): Promise<readonly string[]> => {
  const batch = kitchen.batches[number - 1];
  if (batch === undefined) return taken;
  const due = await dueOfSetUp(kitchen, batch, today, open);
  const said = [
    spoiltBatchText(batch.trouble),
    ...taken,
    batch.generation === 1 ? usualText(due) : null,
    dueText(due, kitchen, plainWriting(kitchen.shownUnit)),
  ];
  return said.filter((text) => text !== null);
};
