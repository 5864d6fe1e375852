/** A new batch as kitchen.yaml will have it: as said, else taken, else asked at the terminal. */
import type { BatchEntry } from "../../kitchen/edits/entries.ts";
import { separations } from "../../kitchen/kitchen.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { readGeneration } from "../../kitchen/schema/written-values.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Shell } from "../command-result.ts";
import { localDay } from "../local-day.ts";
import { saidOfBatch } from "./batch-options.ts";
import type { BatchOptions } from "./batch-options.ts";
import { takenCulture, takenSetUp } from "./batch-taken.ts";
import type { Taken } from "./batch-taken.ts";
import { cultureOf } from "./known-ids.ts";
import { plainNumber } from "./plain-number.ts";
import { askSetUp, choicesOf, choose, stopped } from "./set-up-asked.ts";
import type { AskedSetUp, SaidSetUp } from "./set-up-asked.ts";

export interface NewBatch {
  readonly entry: BatchEntry;
  readonly taken: readonly Taken[];
  /** Today by this computer's clock, where no day was said; else null. */
  readonly today: string | null;
}

export const ofBatch = {
  appliance: "a batch is held in one appliance",
  container: "the batch stood in something",
};

const saidSetUp = ({ appliance, setting, container }: BatchOptions): SaidSetUp => ({
  appliance,
  setting,
  container,
});

/** In the order in which one would tell it; the set-up's own control says whether there is a setting. */
export const setUpEntry = ({ appliance, setting, container }: AskedSetUp): BatchEntry => ({
  appliance,
  ...(setting === null ? {} : { setting: plainNumber(setting) }),
  container,
});

const askCulture = (kitchen: Kitchen, shell: Shell): Promise<Outcome<string>> => {
  const missing = { option: "--culture", why: "a batch is of one culture" };
  return choose("Which culture?", choicesOf(kitchen.cultures), missing, shell);
};

const askGeneration = async (): Promise<Outcome<BatchEntry>> => {
  const { askText } = await import("./ask.ts");
  const typed = await askText(
    "Which generation? 1: with a fresh starter; 2: with some of that batch; nothing: not known",
    "2",
    (text) =>
      text.trim() === "" || readGeneration(text) !== null
        ? undefined
        : "Expected a whole number from 1 to 1000, or nothing.",
  );
  if (typed === null) return stopped;
  const generation = readGeneration(typed || "");
  return done(generation === null ? {} : { generation });
};

const askSeparated = async (): Promise<Outcome<BatchEntry>> => {
  const { chooseOne } = await import("./ask.ts");
  const choices = separations.map((value) => ({ value, label: value }));
  const unknown = { value: "", label: "not known yet" };
  const chosen = await chooseOne("Did whey part from it?", [...choices, unknown]);
  if (chosen === null) return stopped;
  return done(chosen === "" ? {} : { separated: chosen });
};

/** The two answers that decide whether a water test is due, asked for where somebody sits. */
const askOutcome = async (options: BatchOptions, { asks }: Shell): Promise<Outcome<BatchEntry>> => {
  if (!asks) return done({});
  const generation = options.generation === undefined ? await askGeneration() : done({});
  if (!generation.ok) return generation;
  const separated = options.separated === undefined ? await askSeparated() : done({});
  return separated.ok ? done({ ...generation.value, ...separated.value }) : separated;
};

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

/** Fails where something is missing and nobody can be asked, or is not in the kitchen. */
export const newBatch = async (
  kitchen: Kitchen,
  options: BatchOptions,
  shell: Shell,
): Promise<Outcome<NewBatch>> => {
  const taken = options.culture === undefined ? takenCulture(kitchen) : null;
  const said = options.culture ?? taken?.value;
  const id = said === undefined ? await askCulture(kitchen, shell) : done(said);
  if (!id.ok) return id;
  const culture = cultureOf(kitchen, id.value);
  if (!culture.ok) return culture;
  const filled = takenSetUp(kitchen, culture.value.id, saidSetUp(options));
  const setUp = await askSetUp(kitchen, filled.setUp, shell, ofBatch);
  if (!setUp.ok) return setUp;
  const outcome = await askOutcome(options, shell);
  if (!outcome.ok) return outcome;
  const today = options.date === undefined ? localDay(shell.now()) : null;
  const head = {
    date: options.date ?? today,
    culture: culture.value.id,
    ...setUpEntry(setUp.value),
  };
  return done({
    entry: inOrder({ ...outcome.value, ...saidOfBatch(options), ...head }),
    taken: [...(taken === null ? [] : [taken]), ...filled.taken],
    today,
  });
};
