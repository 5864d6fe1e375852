/** Options of `batch` as what they say of the batch. */
import * as z from "zod";
import type { BatchEntry } from "../../kitchen/edits/entries.ts";
import { milkBodies, separations, sournesses, troubles } from "../../kitchen/kitchen.ts";
import { readWord } from "../../kitchen/schema/written-names.ts";
import {
  readDate,
  readGeneration,
  readHours,
  readPart,
  readYesNo,
} from "../../kitchen/schema/written-values.ts";
import { flag, once, read, words } from "../option-readers.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";
import { plainNumber } from "../plain-number.ts";

/** An answer, or null inside where it was taken back. */
interface Said<Value> {
  readonly said: Value | null;
}

const answer = <Value>(expected: string, parse: (text: string) => Value | null) =>
  once(
    read(`${expected}, or unknown`, (text): Said<Value> | null => {
      if (/^unknown$/i.test(text.trim())) return { said: null };
      const said = parse(text);
      return said === null ? null : { said };
    }),
  );

const oneOfWords = <Word extends string>(list: readonly Word[]) =>
  answer(`one of ${list.join(", ")}`, readWord(list));

/** Kept as it was typed, where it can be read. */
const asTyped =
  <Written>(parse: (text: string) => number | null, written: (text: string) => Written) =>
  (text: string): Written | null =>
    parse(text) === null ? null : written(text.trim());

const percent = (text: string): string => text.replace(/\s*%$/, " %");

const troubleWords = [...troubles, "none"] as const;
type TroubleWord = (typeof troubleWords)[number];

const readTroubles = (text: string): readonly TroubleWord[] | null => {
  const list = text.split(",").map(readWord(troubleWords));
  return list.includes(null) ? null : list.flatMap((one) => one ?? []);
};

const trouble = read(
  `${troubles.join(", ")}, several with commas between them, or none`,
  readTroubles,
);

export const batchShape = z.object({
  ...kitchenShapes,
  culture: words("a culture's name"),
  appliance: words("an appliance's name"),
  setting: words("what it was set to, such as 38, a program or a mark"),
  container: words("a container's name"),
  date: once(read("a day as year-month-day, such as 2026-11-20", readDate)),
  generation: answer("1 for a fresh starter, 2 for some of that batch, and so on", readGeneration),
  milk: oneOfWords(milkBodies),
  heated: answer("yes or no", readYesNo),
  starter: answer("a part of the whole, such as 5%", asTyped(readPart, percent)),
  hours: answer("a time above 0 and up to 240 hours, such as 36", asTyped(readHours, plainNumber)),
  moved: answer("yes or no", readYesNo),
  separated: oneOfWords(separations),
  sourness: oneOfWords(sournesses),
  trouble: z.array(trouble).optional(),
  notes: once(read("a text", (text) => text.trim())),
  remove: flag,
});

export type BatchOptions = z.infer<typeof batchShape>;

/** Options that may be given again. */
export const batchRepeatable = ["trouble"] as const;

const answered = [
  "milk",
  "heated",
  "generation",
  "starter",
  "hours",
  "separated",
  "sourness",
  "moved",
] as const;

/** "none" stands for itself only: beside a sign of trouble the sign counts. */
const troubleEntry = (said: BatchOptions["trouble"]): BatchEntry => {
  if (said === undefined) return {};
  const seen = troubles.filter((one) => said.flat().includes(one));
  return { trouble: seen.length === 0 ? null : seen };
};

/** What was said beside the set-up; an empty entry where nothing was. */
export const saidOfBatch = (options: BatchOptions): BatchEntry => {
  const { date, culture, notes } = options;
  const answers = answered.flatMap((key) => {
    const given = options[key];
    return given === undefined ? [] : [[key, given.said] as const];
  });
  return {
    ...(date === undefined ? {} : { date }),
    ...(culture === undefined ? {} : { culture }),
    ...Object.fromEntries(answers),
    ...troubleEntry(options.trouble),
    ...(notes === undefined ? {} : { notes: notes === "" ? null : notes }),
  };
};

/** Whether anything at all was said of a batch. */
export const saysSomething = (options: BatchOptions): boolean =>
  [options.appliance, options.setting, options.container].some((one) => one !== undefined) ||
  Object.keys(saidOfBatch(options)).length > 0;
