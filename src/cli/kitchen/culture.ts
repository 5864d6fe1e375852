/** `culture`: lists the kitchen's cultures and the catalogue, takes one in, or changes its figures. */
import { cultures as catalogue } from "../../culture/catalogue.ts";
import type { Culture } from "../../culture/culture.ts";
import { cultureEdit } from "../../input/kitchen/culture-edit.ts";
import { cultureShape, saidCulture } from "../../input/kitchen/culture-options.ts";
import type { CultureOptions } from "../../input/kitchen/culture-options.ts";
import type { KitchenEdit } from "../../input/kitchen/edit-kitchen-text.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered, commandRun } from "../command-run.ts";
import { cultureTable } from "./culture-table.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";

const titled = (title: string, lines: readonly string[]): readonly string[] => [
  title,
  ...lines,
  "",
];

const list = async (options: CultureOptions, shell: Shell): Promise<Outcome<CommandResult>> => {
  const opened = await openKitchen(folderOf(options));
  // The catalogue is worth a look before there is a kitchen.
  const unasked = !opened.ok && opened.problem.code === "kitchen-missing" && !options.kitchen;
  if (!opened.ok && !unasked) return opened;
  const kitchen = opened.ok ? opened.value.kitchen : null;
  const page = { ...shell, unit: kitchen?.shownUnit ?? "degC" } as const;
  const own = kitchen?.cultures ?? [];
  const lines = [
    ...(own.length === 0 ? [] : titled("In this kitchen:", cultureTable(own, page))),
    ...titled("In the catalogue:", cultureTable(catalogue, page)),
    '"holdband culture yoghurt" takes one into the kitchen.',
  ];
  return answered(options, shell, lines.join("\n"), { cultures: own, catalogue });
};

const saysOfCulture = (options: CultureOptions): boolean =>
  Object.keys(saidCulture(options)).length > 0;

const find = ({ cultures }: Kitchen, id: string): Culture | undefined =>
  cultures.find((one) => one.id === id);

const put = async (
  id: string,
  edit: KitchenEdit,
  options: CultureOptions,
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const edited = await editKitchen(folderOf(options), edit);
  if (!edited.ok) return edited;
  const { before, after } = edited.value;
  const culture = find(after, id);
  if (culture === undefined) return failed("internal", { what: `culture ${id} was not kept` });
  const was = find(before, id);
  const changed = saysOfCulture(options) ? "Changed; it is now:" : "It was here already:";
  const table = cultureTable([culture], { ...shell, unit: after.shownUnit });
  const lines = [was === undefined ? "Taken in:" : changed, ...table];
  return answered(options, shell, lines.join("\n"), { cultures: [culture] });
};

export const culture = commandRun(cultureShape, [], async (words, options, shell) => {
  const [id] = words;
  if (id === undefined && !saysOfCulture(options)) return list(options, shell);
  const edit = cultureEdit(words, options);
  if (!edit.ok) return edit;
  return put(id ?? "", edit.value, options, shell);
});
