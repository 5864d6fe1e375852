/** `batch`: lists the log, adds a batch, or does something with one of the log. */
import { withBatch } from "../../kitchen/edits/with-batch.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered, commandRun } from "../command-run.ts";
import { notToCome } from "../local-day.ts";
import { batchAnswer } from "./batch-answer.ts";
import { newBatch } from "./batch-asked.ts";
import { numbered } from "./batch-list.ts";
import { batchOfNumber, tellBatch } from "./batch-of-number.ts";
import type { BatchRequest } from "./batch-of-number.ts";
import { batchShape, saysSomething } from "./batch-options.ts";
import type { BatchOptions } from "./batch-options.ts";
import { takenText } from "./batch-taken-text.ts";
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
  const asked = await newBatch(opened.kitchen, options, shell);
  if (!asked.ok) return asked;
  const edited = await editKitchen(opened.folder, ({ text, file }) =>
    withBatch(text, file, asked.value.entry),
  );
  if (!edited.ok) return edited;
  const { after: kitchen } = edited.value;
  const number = kitchen.batches.length;
  const title = (date: string): string => `Logged as batch ${number}, of ${date}:`;
  return tellBatch(request, { kitchen, number, title, remarks: takenText(asked.value) });
};

const clash = (
  word: string | undefined,
  options: BatchOptions,
  shell: Shell,
): Outcome<never> | null => {
  if (options.remove && word === undefined) {
    return failed("option-missing", { option: "the batch's number", why: "a batch goes by that" });
  }
  if (options.remove && saysSomething(options)) {
    const why = "what is taken out is not changed as well";
    return failed("options-contradict", { first: "--remove", second: "another answer", why });
  }
  return options.date === undefined ? null : notToCome("--date", options.date, shell.now());
};

export const batch = commandRun(batchShape, ["trouble"], async ([word], options, shell) => {
  const wrong = clash(word, options, shell);
  if (wrong !== null) return wrong;
  const opened = await openKitchen(folderOf(options));
  if (!opened.ok) return opened;
  const request = { opened: opened.value, options, shell };
  if (word !== undefined) return batchOfNumber(request, word);
  return saysSomething(options) ? add(request) : list(request);
});
