/** What is asked at the terminal of a batch, beside what was said; elsewhere what is missing is a problem. */
import { batchChange, changedSetUp } from "../../input/kitchen/batch-change.ts";
import type { BatchOptions } from "../../input/kitchen/batch-options.ts";
import { cultureMissing, newBatch, takenForBatch } from "../../input/kitchen/new-batch.ts";
import { cultureOf } from "../../input/known-ids.ts";
import { ofBatch } from "../../input/set-up.ts";
import type { SaidSetUp, SettledSetUp } from "../../input/set-up.ts";
import { separations } from "../../kitchen/kitchen.ts";
import type { Batch, Kitchen } from "../../kitchen/kitchen.ts";
import { readWord } from "../../kitchen/schema/written-names.ts";
import { readGeneration } from "../../kitchen/schema/written-values.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Shell } from "../command-result.ts";
import { askSetUp, choicesOf, choose, stopped } from "./set-up-asked.ts";

type Asked = Promise<Outcome<BatchOptions>>;

const askCulture = async (kitchen: Kitchen, options: BatchOptions, shell: Shell): Asked => {
  const missing = cultureMissing(kitchen);
  const id = await choose("Which culture?", choicesOf(kitchen.cultures), missing, shell);
  return id.ok ? done({ ...options, culture: id.value }) : id;
};

const askGeneration = async (options: BatchOptions): Asked => {
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
  const said = readGeneration(typed || "");
  return done(said === null ? options : { ...options, generation: { said } });
};

const askSeparated = async (options: BatchOptions): Asked => {
  const { chooseOne } = await import("./ask.ts");
  const choices = separations.map((value) => ({ value, label: value }));
  const unknown = { value: "", label: "not known yet" };
  const chosen = await chooseOne("Did whey part from it?", [...choices, unknown]);
  if (chosen === null) return stopped;
  const said = readWord(separations)(chosen);
  return done(said === null ? options : { ...options, separated: { said } });
};

/** The two answers that decide whether a water test is due. */
const askOutcome = async (options: BatchOptions): Asked => {
  const grown = options.generation === undefined ? await askGeneration(options) : done(options);
  if (!grown.ok) return grown;
  return grown.value.separated === undefined ? askSeparated(grown.value) : grown;
};

/** Only what nobody said and nothing could be taken for. */
const withAnswers = (
  options: BatchOptions,
  known: SaidSetUp,
  { appliance, setting, container }: SettledSetUp,
): BatchOptions => ({
  ...options,
  ...(known.appliance === undefined ? { appliance } : {}),
  ...(known.setting === undefined && setting !== null ? { setting } : {}),
  ...(known.container === undefined ? { container } : {}),
});

/** The options of a new batch with what was asked; fails as `newBatch` does where nobody can be. */
export const askNewBatch = async (
  kitchen: Kitchen,
  options: BatchOptions,
  today: string,
  shell: Shell,
): Asked => {
  if (!shell.asks) {
    const batch = newBatch(kitchen, options, today);
    return batch.ok ? done(options) : batch;
  }
  const found = takenForBatch(kitchen, options);
  if (!found.ok) return found;
  const named =
    found.value.culture === null ? await askCulture(kitchen, options, shell) : done(options);
  if (!named.ok) return named;
  const filled = takenForBatch(kitchen, named.value);
  if (!filled.ok) return filled;
  const { setUp } = filled.value;
  const settled = await askSetUp(kitchen, setUp, shell, ofBatch);
  return settled.ok ? askOutcome(withAnswers(named.value, setUp, settled.value)) : settled;
};

/** The same of a change: in another appliance the setting must be said anew. */
export const askBatchChange = async (
  kitchen: Kitchen,
  batch: Batch,
  options: BatchOptions,
  shell: Shell,
): Asked => {
  const culture = options.culture === undefined ? null : cultureOf(kitchen, options.culture);
  if (culture !== null && !culture.ok) return culture;
  const known = changedSetUp(kitchen, batch, options);
  if (!shell.asks || known === null) {
    const change = batchChange(kitchen, batch, options);
    return change.ok ? done(options) : change;
  }
  const settled = await askSetUp(kitchen, known, shell, ofBatch);
  return settled.ok ? done(withAnswers(options, known, settled.value)) : settled;
};
