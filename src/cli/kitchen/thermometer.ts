/** `thermometer`: a check in, its correction out; kept in the kitchen where the thermometer is named. */
import {
  saysOfThermometer,
  thermometerClash,
  thermometerEdit,
} from "../../input/kitchen/thermometer-edit.ts";
import {
  thermometerRepeatable,
  thermometerShape,
} from "../../input/kitchen/thermometer-options.ts";
import type { ThermometerOptions } from "../../input/kitchen/thermometer-options.ts";
import { thermometerOf } from "../../input/known-ids.ts";
import { localDay } from "../../input/local-day.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { commandRun } from "../command-run.ts";
import { askAboutDoubts } from "./ask-about-doubts.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";
import { questionWords } from "../../report/wording/question-words.ts";
import { checkUnkept, listThermometers, showThermometer } from "./thermometer-answers.ts";

const store = async (
  id: string,
  options: ThermometerOptions,
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const edit = thermometerEdit([id], options, localDay(shell.now()), questionWords);
  if (!edit.ok) return edit;
  const edited = await editKitchen(folderOf(options), edit.value);
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

/** Without a name: a check is worked out and not kept; without a check either, all are listed. */
const unnamed = async (
  options: ThermometerOptions,
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const opened = await openKitchen(folderOf(options));
  const absent = !opened.ok && opened.problem.code === "kitchen-missing" && !options.kitchen;
  if (!opened.ok && !absent) return opened;
  const kitchen = opened.ok ? opened.value.kitchen : null;
  if (saysOfThermometer(options)) return checkUnkept(kitchen, options, shell);
  if (kitchen !== null) return listThermometers(kitchen, options, shell);
  return failed("option-missing", {
    option: "--ice, --boiling or --reference",
    why: "there is no kitchen here whose thermometers could be listed",
  });
};

export const thermometer = commandRun(
  thermometerShape,
  thermometerRepeatable,
  async ([id], options, shell) => {
    const clash = thermometerClash(options, localDay(shell.now()));
    if (clash !== null) return clash;
    if (id !== undefined && !saysOfThermometer(options)) return show(id, options, shell);
    const run = (said: ThermometerOptions): Promise<Outcome<CommandResult>> =>
      id === undefined ? unnamed(said, shell) : store(id, said, shell);
    return askAboutDoubts(await run(options), shell, () => run({ ...options, confirm: true }));
  },
);
