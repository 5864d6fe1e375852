/** One batch of the log, by its number: shown, changed or taken out. */
import {
  batchEdit,
  batchNumber,
  onlyOfBatch,
  removedBatchText,
} from "../../input/kitchen/batch-edit.ts";
import { saysSomething } from "../../input/kitchen/batch-options.ts";
import type { BatchOptions } from "../../input/kitchen/batch-options.ts";
import type { EditedKitchen } from "../../input/kitchen/edit-kitchen-text.ts";
import { localDay } from "../../input/local-day.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered } from "../command-run.ts";
import { batchAnswer } from "./batch-answer.ts";
import { askBatchChange } from "./batch-asked.ts";
import { numbered } from "./batch-list.ts";
import { editKitchen } from "./edit-kitchen.ts";
import type { OpenKitchen } from "./kitchen-folder.ts";

type Answer = Promise<Outcome<CommandResult>>;

/** What a command over the log was given. */
export interface BatchRequest {
  readonly opened: OpenKitchen;
  readonly options: BatchOptions;
  readonly shell: Shell;
}

interface Telling {
  readonly kitchen: Kitchen;
  readonly number: number;
  readonly title: (date: string) => string;
  readonly remarks: readonly string[];
}

/** One batch with what follows from it. */
export const tellBatch = (
  { opened: { folder }, options, shell }: BatchRequest,
  { kitchen, number, title, remarks }: Telling,
): Answer => {
  const batches = numbered(kitchen).filter((one) => one.number === number);
  const date = batches[0]?.batch.date ?? "";
  const told = { folder, kitchen, title: title(date), batches, remarks, about: "one" } as const;
  return batchAnswer(told, options, shell);
};

/** What `options` say, done to the batch that was meant. */
const editBatch = async (
  { opened: { folder, kitchen }, shell }: BatchRequest,
  number: number,
  options: BatchOptions,
): Promise<Outcome<EditedKitchen>> => {
  const edit = batchEdit([`${number}`], options, localDay(shell.now()));
  if (!edit.ok) return edit;
  return editKitchen(folder, onlyOfBatch(number, kitchen.batches[number - 1]!, edit.value));
};

const remove = async (request: BatchRequest, number: number): Answer => {
  const { options, shell } = request;
  const edited = await editBatch(request, number, options);
  if (!edited.ok) return edited;
  const batch = edited.value.before.batches[number - 1]!;
  const text = `${removedBatchText(edited.value, number)} The version before stands in kitchen.previous.yaml.`;
  return answered(options, shell, text, { removed: { number, ...batch } });
};

const change = async (request: BatchRequest, number: number): Answer => {
  const { opened, options, shell } = request;
  const { kitchen } = opened;
  const asked = await askBatchChange(kitchen, kitchen.batches[number - 1]!, options, shell);
  if (!asked.ok) return asked;
  const edited = await editBatch(request, number, asked.value);
  if (!edited.ok) return edited;
  const title = (date: string): string => `Changed; batch ${number}, of ${date}, is now:`;
  return tellBatch(request, { kitchen: edited.value.after, number, title, remarks: [] });
};

export const batchOfNumber = async (request: BatchRequest, word: string): Answer => {
  const { opened, options } = request;
  const number = batchNumber(word, opened.kitchen);
  if (!number.ok) return number;
  if (options.remove) return remove(request, number.value);
  if (saysSomething(options)) return change(request, number.value);
  const title = (date: string): string => `Batch ${number.value}, of ${date}:`;
  const { kitchen } = opened;
  return tellBatch(request, { kitchen, number: number.value, title, remarks: [] });
};
