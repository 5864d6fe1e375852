/** A thermometer and its checks into the kitchen; what looks wrong is questioned before it is kept. */
import type { CheckEntry, ThermometerEntry } from "../../kitchen/edits/entries.ts";
import { withCheck } from "../../kitchen/edits/with-check.ts";
import { withThermometer } from "../../kitchen/edits/with-thermometer.ts";
import type { KitchenThermometer } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { notToCome } from "../local-day.ts";
import { plainNumber } from "../plain-number.ts";
import { doubtful } from "./doubts.ts";
import type { SayQuestion } from "./doubts.ts";
import type { FoundKitchen, KitchenEdit } from "./edit-kitchen-text.ts";
import { checkEntries } from "./new-checks.ts";
import { nameMissing } from "./section-edit.ts";
import { incomplete } from "./thermometer-options.ts";
import type { ThermometerOptions } from "./thermometer-options.ts";
import { windowsAsked } from "./windows-asked.ts";

const describedBy = ({ name, accuracy, resolution }: ThermometerOptions): ThermometerEntry => ({
  ...(name === undefined ? {} : { name }),
  ...(resolution === undefined ? {} : { resolution: plainNumber(resolution.written) }),
  ...(accuracy === undefined ? {} : { accuracy: plainNumber(accuracy.written) }),
});

/** Whether anything was said of the thermometer or measured with it. */
export const saysOfThermometer = (options: ThermometerOptions): boolean =>
  checkEntries(options, "").length > 0 || Object.keys(describedBy(options)).length > 0;

/** What cannot be, whatever the kitchen holds; null where all is well. `today`: ISO day. */
export const thermometerClash = (
  options: ThermometerOptions,
  today: string,
): Outcome<never> | null => {
  const { date } = options;
  return incomplete(options) ?? (date === undefined ? null : notToCome("--date", date, today));
};

const find = (thermometers: readonly KitchenThermometer[], id: string): KitchenThermometer | null =>
  thermometers.find((one) => one.id === id) ?? null;

/** The same command given twice is one check. */
const isKept = (known: KitchenThermometer | null, after: KitchenThermometer | null): boolean => {
  const added = JSON.stringify(after?.checks.at(-1));
  return known?.checks.some((one) => JSON.stringify(one) === added) === true;
};

const thermometersIn = (text: string, file: string): Outcome<readonly KitchenThermometer[]> => {
  const kitchen = parseKitchen(text, file);
  return kitchen.ok ? done(kitchen.value.thermometers) : kitchen;
};

const addCheck = (text: string, file: string, id: string, check: CheckEntry): Outcome<string> => {
  const before = thermometersIn(text, file);
  if (!before.ok) return before;
  const edited = withCheck(text, file, id, check);
  if (!edited.ok) return edited;
  const after = thermometersIn(edited.value, file);
  if (!after.ok) return after;
  return isKept(find(before.value, id), find(after.value, id)) ? done(text) : edited;
};

/** The entry and its checks, one after the other. */
const written = (
  { text, file }: FoundKitchen,
  id: string,
  isNew: boolean,
  options: ThermometerOptions,
  today: string,
): Outcome<string> => {
  const said = describedBy(options);
  const isSaid = isNew || Object.keys(said).length > 0;
  let edited = isSaid ? withThermometer(text, file, id, said, { replace: true }) : done(text);
  for (const check of checkEntries(options, today)) {
    if (!edited.ok) return edited;
    edited = addCheck(edited.value, file, id, check);
  }
  return edited;
};

/**
 * `words`: the thermometer's id. A check that looks wrong is the problem
 * "check-doubtful" in the words of `say`, unless `options.confirm` says that
 * it stands.
 */
export const thermometerEdit = (
  [id]: readonly string[],
  options: ThermometerOptions,
  today: string,
  say: SayQuestion,
): Outcome<KitchenEdit> => {
  const clash = thermometerClash(options, today);
  if (clash !== null) return clash;
  if (id === undefined) return nameMissing("thermometer");
  return done((found) => {
    const { file, kitchen } = found;
    // A window that cannot be judged must not come up after the check was stored.
    const windows = windowsAsked(options, kitchen);
    if (!windows.ok) return windows;
    const before = find(kitchen.thermometers, id);
    const edited = written(found, id, before === null, options, today);
    if (!edited.ok) return edited;
    const after = thermometersIn(edited.value, file);
    if (!after.ok) return after;
    const thermometer = find(after.value, id);
    const unit = kitchen.shownUnit;
    const doubts = thermometer === null ? null : doubtful(before, thermometer, unit, say);
    return doubts ?? edited;
  });
};
