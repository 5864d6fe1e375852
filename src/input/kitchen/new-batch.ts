/** A new batch as kitchen.yaml will have it: as said, else taken from the kitchen and its log. */
import type { BatchEntry } from "../../kitchen/edits/entries.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { cultureOf } from "../known-ids.ts";
import { plainNumber } from "../plain-number.ts";
import { missingProblem, ofBatch, settledSetUp } from "../set-up.ts";
import type { Missing, SaidSetUp, SettledSetUp } from "../set-up.ts";
import { saidOfBatch } from "./batch-options.ts";
import type { BatchOptions } from "./batch-options.ts";
import { takenCulture, takenSetUp } from "./batch-taken.ts";
import type { FilledSetUp, Taken } from "./batch-taken.ts";

export interface NewBatch {
  readonly entry: BatchEntry;
  /** What nobody said and was taken. */
  readonly taken: readonly Taken[];
  /** Today by this computer's clock, where no day was said; else null. */
  readonly today: string | null;
}

/** The same, as far as it can be taken. */
export interface TakenForBatch extends FilledSetUp {
  /** Id of the culture; null where there are several, or none. */
  readonly culture: string | null;
}

export const cultureMissing = ({ cultures }: Kitchen): Missing => ({
  option: "--culture",
  why: "a batch is of one culture",
  known: cultures.map(({ id }) => id),
});

export const saidSetUp = ({ appliance, setting, container }: BatchOptions): SaidSetUp => ({
  appliance,
  setting,
  container,
});

/** Nothing is taken for a culture that is not known. Fails where the one that was said is not in the kitchen. */
export const takenForBatch = (kitchen: Kitchen, options: BatchOptions): Outcome<TakenForBatch> => {
  const only = options.culture === undefined ? takenCulture(kitchen) : null;
  const id = options.culture ?? only?.value;
  if (id === undefined) return done({ culture: null, setUp: saidSetUp(options), taken: [] });
  const culture = cultureOf(kitchen, id);
  if (!culture.ok) return culture;
  const filled = takenSetUp(kitchen, culture.value.id, saidSetUp(options));
  const taken = only === null ? filled.taken : [only, ...filled.taken];
  return done({ culture: culture.value.id, setUp: filled.setUp, taken });
};

/** In the order in which one would tell it; the set-up's own control says whether there is a setting. */
const setUpEntry = ({ appliance, setting, container }: SettledSetUp): BatchEntry => ({
  appliance,
  ...(setting === null ? {} : { setting: plainNumber(setting) }),
  container,
});

const keys: readonly (keyof BatchEntry)[] = [
  "date",
  "culture",
  "appliance",
  "setting",
  "container",
  "milk",
  "heated",
  "generation",
  "starter",
  "hours",
  "separated",
  "sourness",
  "trouble",
  "moved",
  "notes",
];

/** In the order in which kitchen.yaml has them. */
const inOrder = (entry: BatchEntry): BatchEntry =>
  Object.fromEntries(keys.flatMap((key) => (key in entry ? [[key, entry[key]]] : [])));

/** Fails with "option-missing" where something can neither be read nor taken, or is not in the kitchen. */
export const newBatch = (
  kitchen: Kitchen,
  options: BatchOptions,
  today: string,
): Outcome<NewBatch> => {
  const found = takenForBatch(kitchen, options);
  if (!found.ok) return found;
  const { culture, setUp: filled, taken } = found.value;
  if (culture === null) return missingProblem(cultureMissing(kitchen));
  const setUp = settledSetUp(kitchen, filled, ofBatch);
  if (!setUp.ok) return setUp;
  const { date = today } = options;
  const head = { date, culture, ...setUpEntry(setUp.value) };
  return done({
    entry: inOrder({ ...saidOfBatch(options), ...head }),
    taken,
    today: options.date === undefined ? today : null,
  });
};
