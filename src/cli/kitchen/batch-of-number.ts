/** One batch of the log, by its number: shown, changed or taken out. */
import { changedBatch, withoutBatch } from "../../kitchen/edits/with-batch.ts";
import type { Batch, Kitchen } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered } from "../command-run.ts";
import { batchAnswer } from "./batch-answer.ts";
import { batchChange } from "./batch-changed.ts";
import { numbered } from "./batch-list.ts";
import { saysSomething } from "./batch-options.ts";
import type { BatchOptions } from "./batch-options.ts";
import { editKitchen } from "./edit-kitchen.ts";
import type { KitchenEdit } from "./edit-kitchen.ts";
import type { OpenKitchen } from "./kitchen-folder.ts";
import { cultureOf } from "./known-ids.ts";

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

const same = (one: Batch | undefined, other: Batch): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** Numbers shift when another program takes a batch out: only the batch that was meant is touched. */
const editBatch = (
  { folder, kitchen }: OpenKitchen,
  number: number,
  edit: (found: KitchenEdit) => Outcome<string>,
) => {
  const meant = kitchen.batches[number - 1]!;
  return editKitchen(folder, (found) =>
    same(found.kitchen.batches[number - 1], meant)
      ? edit(found)
      : failed("kitchen-changed-meanwhile", { file: found.file }),
  );
};

const remove = async ({ opened, options, shell }: BatchRequest, number: number): Answer => {
  const edited = await editBatch(opened, number, ({ text, file }) =>
    withoutBatch(text, file, number),
  );
  if (!edited.ok) return edited;
  const { before, after } = edited.value;
  const batch = before.batches[number - 1]!;
  const shifted =
    after.batches.length < number ? "" : " Those after it have moved up by one number.";
  const text = `Batch ${number}, of ${batch.date}, was taken out.${shifted} The version before stands in kitchen.previous.yaml.`;
  return answered(options, shell, text, { removed: { number, ...batch } });
};

const change = async (request: BatchRequest, number: number): Answer => {
  const { opened, options, shell } = request;
  const { kitchen } = opened;
  const culture = options.culture === undefined ? null : cultureOf(kitchen, options.culture);
  if (culture !== null && !culture.ok) return culture;
  const entry = await batchChange(kitchen, kitchen.batches[number - 1]!, options, shell);
  if (!entry.ok) return entry;
  const edited = await editBatch(opened, number, ({ text, file }) =>
    changedBatch(text, file, number, entry.value),
  );
  if (!edited.ok) return edited;
  const title = (date: string): string => `Changed; batch ${number}, of ${date}, is now:`;
  return tellBatch(request, { kitchen: edited.value.after, number, title, remarks: [] });
};

const expectedNumber = (count: number): string => {
  if (count === 0) return "a number of the log, which is empty";
  return count === 1 ? "1, the only one in the log" : `a number from 1 to ${count}`;
};

const numberOf = (word: string, { batches }: Kitchen): Outcome<number> => {
  const number = /^\d{1,6}$/.test(word) ? Number(word) : 0;
  if (batches[number - 1] !== undefined) return done(number);
  const expected = expectedNumber(batches.length);
  return failed("option-invalid", { option: "the batch's number", expected, found: word });
};

export const batchOfNumber = async (request: BatchRequest, word: string): Answer => {
  const { opened, options } = request;
  const number = numberOf(word, opened.kitchen);
  if (!number.ok) return number;
  if (options.remove) return remove(request, number.value);
  if (saysSomething(options)) return change(request, number.value);
  const title = (date: string): string => `Batch ${number.value}, of ${date}:`;
  const { kitchen } = opened;
  return tellBatch(request, { kitchen, number: number.value, title, remarks: [] });
};
