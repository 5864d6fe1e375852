/** A batch as written, read into data; its setting stays a text until the appliance is known. */
import type * as z from "zod";
import { milkBodies, separations, sournesses, troubles } from "../kitchen.ts";
import type { Batch, Setting } from "../kitchen.ts";
import { complain, group, listOf, optional, required } from "./leaf.ts";
import { idOf, setUp } from "./test-schema.ts";
import * as wanted from "./wanted.ts";
import { readNote, readWord } from "./written-names.ts";
import * as written from "./written-values.ts";

/** "none" may be written and is the same as nothing. */
const troubleWords = [...troubles, "none"] as const;

const batchGroup = group({
  date: required(wanted.dateWanted, written.readDate),
  culture: idOf("a culture's name", "culture: reuteri"),
  ...setUp,
  milk: optional(wanted.oneOf(milkBodies, "milk"), readWord(milkBodies)),
  heated: optional({ ...wanted.yesNoWanted, example: "heated: yes" }, written.readYesNo),
  generation: optional(wanted.generationWanted, written.readGeneration),
  starter: optional(wanted.starterWanted, written.readPart),
  hours: optional({ ...wanted.hoursWanted, example: "hours: 36" }, written.readHours),
  separated: optional(wanted.oneOf(separations, "separated"), readWord(separations)),
  sourness: optional(wanted.oneOf(sournesses, "sourness"), readWord(sournesses)),
  trouble: listOf(required(wanted.oneOf(troubleWords, "trouble"), readWord(troubleWords))),
  moved: optional({ ...wanted.yesNoWanted, example: "moved: no" }, written.readYesNo),
  notes: optional(wanted.noteWanted, readNote),
});
type BatchGroup = z.output<typeof batchGroup>;

export const batchSchema = batchGroup.superRefine(({ trouble }, context) => {
  if (trouble.length < 2 || !trouble.includes("none")) return;
  complain(context, ["trouble"], {
    expected: "what was seen, or none",
    found: "both",
    example: "trouble: [pink, fuzzy]",
  });
});

/** Each trouble once, in the order of the list of them. */
export const asBatch = (entry: BatchGroup & { readonly setting: Setting }): Batch => ({
  ...entry,
  trouble: troubles.filter((one) => entry.trouble.includes(one)),
});
