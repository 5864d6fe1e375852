/** `batch`: lists the log, adds a batch, or does something with one of the log. */
import { batchClash, batchEdit } from "../../input/kitchen/batch-edit.ts";
import { batchRepeatable, batchShape, saysSomething } from "../../input/kitchen/batch-options.ts";
import { takenText } from "../../input/kitchen/batch-taken-text.ts";
import { newBatch } from "../../input/kitchen/new-batch.ts";
import { localDay } from "../../input/local-day.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult } from "../command-result.ts";
import { answered, commandRun } from "../command-run.ts";
import { batchAnswer } from "./batch-answer.ts";
import { askNewBatch } from "./batch-asked.ts";
import { numbered } from "./batch-list.ts";
import { batchOfNumber, tellBatch } from "./batch-of-number.ts";
import type { BatchRequest } from "./batch-of-number.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";

const noneYet =
  'No batch was logged in this kitchen yet; "holdband batch --help" shows how to log one.';

type Answer = Promise<Outcome<CommandResult>>;

const list = async ({ opened, options, shell }: BatchRequest): Answer => {
  const { folder, kitchen } = opened;
  const batches = numbered(kitchen);
  if (batches.length === 0) {
    return answered(options, shell, noneYet, { batches, remarks: [], cautions: [], due: [] });
  }
  const all = { folder, kitchen, title: null, batches, remarks: [], about: "all" } as const;
  return batchAnswer(all, options, shell);
};

const add = async (request: BatchRequest): Answer => {
  const { opened, options, shell } = request;
  const today = localDay(shell.now());
  const asked = await askNewBatch(opened.kitchen, options, today, shell);
  if (!asked.ok) return asked;
  const edit = batchEdit([], asked.value, today);
  if (!edit.ok) return edit;
  const edited = await editKitchen(opened.folder, edit.value);
  if (!edited.ok) return edited;
  const { before, after: kitchen } = edited.value;
  const batch = newBatch(before, asked.value, today);
  if (!batch.ok) return batch;
  const number = kitchen.batches.length;
  const title = (date: string): string => `Logged as batch ${number}, of ${date}:`;
  return tellBatch(request, { kitchen, number, title, remarks: takenText(batch.value) });
};

export const batch = commandRun(batchShape, batchRepeatable, async ([word], options, shell) => {
  const wrong = batchClash(word, options, localDay(shell.now()));
  if (wrong !== null) return wrong;
  const opened = await openKitchen(folderOf(options));
  if (!opened.ok) return opened;
  const request = { opened: opened.value, options, shell };
  if (word !== undefined) return batchOfNumber(request, word);
  return saysSomething(options) ? add(request) : list(request);
});
