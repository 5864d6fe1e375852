/** A batch into the log, or one of the log changed or taken out. */
import { changedBatch, withBatch, withoutBatch } from "../../kitchen/edits/with-batch.ts";
import type { Batch, Kitchen } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { notToCome } from "../local-day.ts";
import { batchChange } from "./batch-change.ts";
import { saysSomething } from "./batch-options.ts";
import type { BatchOptions } from "./batch-options.ts";
import type { KitchenEdit } from "./edit-kitchen-text.ts";
import { newBatch } from "./new-batch.ts";

/** What cannot be, whatever the kitchen holds; null where all is well. `today`: ISO day. */
export const batchClash = (
  word: string | undefined,
  options: BatchOptions,
  today: string,
): Outcome<never> | null => {
  if (options.remove && word === undefined) {
    return failed("option-missing", { option: "the batch's number", why: "a batch goes by that" });
  }
  if (options.remove && saysSomething(options)) {
    const why = "what is taken out is not changed as well";
    return failed("options-contradict", { first: "--remove", second: "another answer", why });
  }
  return options.date === undefined ? null : notToCome("--date", options.date, today);
};

const expectedNumber = (count: number): string => {
  if (count === 0) return "a number of the log, which is empty";
  return count === 1 ? "1, the only one in the log" : `a number from 1 to ${count}`;
};

/** A batch's number, its place in the log, from 1. */
export const batchNumber = (word: string, { batches }: Kitchen): Outcome<number> => {
  const number = /^\d{1,6}$/.test(word) ? Number(word) : 0;
  if (batches[number - 1] !== undefined) return done(number);
  const expected = expectedNumber(batches.length);
  return failed("option-invalid", { option: "the batch's number", expected, found: word });
};

const added =
  (options: BatchOptions, today: string): KitchenEdit =>
  ({ text, file, kitchen }) => {
    const batch = newBatch(kitchen, options, today);
    return batch.ok ? withBatch(text, file, batch.value.entry) : batch;
  };

const changed =
  (word: string, options: BatchOptions): KitchenEdit =>
  ({ text, file, kitchen }) => {
    const number = batchNumber(word, kitchen);
    if (!number.ok) return number;
    if (options.remove) return withoutBatch(text, file, number.value);
    const change = batchChange(kitchen, kitchen.batches[number.value - 1]!, options);
    return change.ok ? changedBatch(text, file, number.value, change.value) : change;
  };

/** `words`: a batch's number, which is changed, or with `options.remove` taken out; none: a new batch. */
export const batchEdit = (
  [word]: readonly string[],
  options: BatchOptions,
  today: string,
): Outcome<KitchenEdit> => {
  const clash = batchClash(word, options, today);
  if (clash !== null) return clash;
  return done(word === undefined ? added(options, today) : changed(word, options));
};

/** What is told after the batch of that number was taken out. */
export const removedBatchText = (
  { before, after }: Readonly<Record<"before" | "after", Pick<Kitchen, "batches">>>,
  number: number,
): string => {
  const shifted =
    after.batches.length < number ? "" : " Those after it have moved up by one number.";
  return `Batch ${number}, of ${before.batches[number - 1]?.date}, was taken out.${shifted}`;
};

const same = (one: Batch | undefined, other: Batch): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** Numbers shift when another program takes a batch out: only the batch that was meant is touched. */
export const onlyOfBatch =
  (number: number, meant: Batch, edit: KitchenEdit): KitchenEdit =>
  (found) =>
    same(found.kitchen.batches[number - 1], meant)
      ? edit(found)
      : failed("kitchen-changed-meanwhile", { file: found.file });
