/** `thermometer`: a check in, its correction out; kept in the kitchen where the thermometer is named. */
import type { CheckEntry, ThermometerEntry } from "../../kitchen/edits/entries.ts";
import { withCheck } from "../../kitchen/edits/with-check.ts";
import { withThermometer } from "../../kitchen/edits/with-thermometer.ts";
import type { KitchenThermometer } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { commandRun } from "../command-run.ts";
import { localDay, notToCome } from "../local-day.ts";
import { askAboutDoubts } from "./ask-about-doubts.ts";
import { doubtful } from "./doubts.ts";
import { editKitchen } from "./edit-kitchen.ts";
import type { KitchenEdit } from "./edit-kitchen.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";
import { thermometerOf } from "./known-ids.ts";
import { checkEntries } from "./new-checks.ts";
import { plainNumber } from "./plain-number.ts";
import { checkUnkept, listThermometers, showThermometer } from "./thermometer-answers.ts";
import { windowsAsked } from "./thermometer-findings.ts";
import { incomplete, repeatedOptions, thermometerShape } from "./thermometer-options.ts";
import type { ThermometerOptions } from "./thermometer-options.ts";

const describedBy = ({ name, accuracy, resolution }: ThermometerOptions): ThermometerEntry => ({
  ...(name === undefined ? {} : { name }),
  ...(resolution === undefined ? {} : { resolution: plainNumber(resolution.written) }),
  ...(accuracy === undefined ? {} : { accuracy: plainNumber(accuracy.written) }),
});

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

/** The thermometer's entry and its checks, one after the other; questioned before anything is written. */
const edit =
  (id: string, options: ThermometerOptions, today: string) =>
  ({ text, file, kitchen }: KitchenEdit): Outcome<string> => {
    // A window that cannot be judged must not come up after the check was stored.
    const windows = windowsAsked(options, kitchen);
    if (!windows.ok) return windows;
    const before = find(kitchen.thermometers, id);
    const said = describedBy(options);
    const isNew = before === null || Object.keys(said).length > 0;
    let edited = isNew ? withThermometer(text, file, id, said, { replace: true }) : done(text);
    for (const check of checkEntries(options, today)) {
      if (!edited.ok) return edited;
      edited = addCheck(edited.value, file, id, check);
    }
    if (!edited.ok) return edited;
    const after = thermometersIn(edited.value, file);
    if (!after.ok) return after;
    const thermometer = find(after.value, id);
    const doubts = thermometer === null ? null : doubtful(before, thermometer, kitchen.shownUnit);
    return doubts ?? edited;
  };

const store = async (
  id: string,
  options: ThermometerOptions,
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const edited = await editKitchen(folderOf(options), edit(id, options, localDay(shell.now())));
  if (!edited.ok) return edited;
  return showThermometer(edited.value.after, id, options, shell, true);
};

const show = async (
  id: string,
  options: ThermometerOptions,
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const opened = await openKitchen(folderOf(options));
  if (!opened.ok) return opened;
  const known = thermometerOf(opened.value.kitchen, id);
  if (!known.ok) return known;
  return showThermometer(opened.value.kitchen, id, options, shell, false);
};

const anythingSaid = (options: ThermometerOptions): boolean =>
  checkEntries(options, "").length > 0 || Object.keys(describedBy(options)).length > 0;

/** Without a name: a check is worked out and not kept; without a check either, all are listed. */
const unnamed = async (
  options: ThermometerOptions,
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const opened = await openKitchen(folderOf(options));
  const absent = !opened.ok && opened.problem.code === "kitchen-missing" && !options.kitchen;
  if (!opened.ok && !absent) return opened;
  const kitchen = opened.ok ? opened.value.kitchen : null;
  if (anythingSaid(options)) return checkUnkept(kitchen, options, shell);
  if (kitchen !== null) return listThermometers(kitchen, options, shell);
  return failed("option-missing", {
    option: "--ice, --boiling or --reference",
    why: "there is no kitchen here whose thermometers could be listed",
  });
};

export const thermometer = commandRun(
  thermometerShape,
  repeatedOptions,
  async ([id], options, shell) => {
    const { date } = options;
    const early = date === undefined ? null : notToCome("--date", date, shell.now());
    const gap = incomplete(options) ?? early;
    if (gap !== null) return gap;
    if (id !== undefined && !anythingSaid(options)) return show(id, options, shell);
    const run = (said: ThermometerOptions): Promise<Outcome<CommandResult>> =>
      id === undefined ? unnamed(said, shell) : store(id, said, shell);
    return askAboutDoubts(await run(options), shell, () => run({ ...options, confirm: true }));
  },
);
