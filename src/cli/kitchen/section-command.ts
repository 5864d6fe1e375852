/** What `appliance` and `container` have in common: to list, to show one, to add one or change it. */
import type { KitchenEdit } from "../../input/kitchen/edit-kitchen-text.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered } from "../command-run.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";

interface Section<Entry extends { readonly id: string }> {
  /** "appliance", also the command's name. */
  readonly what: string;
  readonly plural: string;
  readonly folder: { readonly kitchen?: string | undefined; readonly json: boolean };
  readonly id: string | undefined;
  /** Empty where nothing was said: then it is shown. */
  readonly said: Outcome<object>;
  readonly edit: Outcome<KitchenEdit>;
  readonly entries: (kitchen: Kitchen) => readonly Entry[];
  readonly find: (kitchen: Kitchen, id: string) => Outcome<Entry>;
  readonly lines: (
    kitchen: Kitchen,
    entries: readonly Entry[],
    page: { readonly width: number; readonly ascii: boolean },
  ) => readonly string[];
  readonly shell: Shell;
}

const noneYet = (what: string, plural: string): string =>
  `There are no ${plural} in this kitchen yet; "holdband ${what} --help" shows how to enter one.`;

const list = async <Entry extends { readonly id: string }>(
  section: Section<Entry>,
): Promise<Outcome<CommandResult>> => {
  const { what, plural, id, shell } = section;
  const opened = await openKitchen(folderOf(section.folder));
  if (!opened.ok) return opened;
  const { kitchen } = opened.value;
  const one = id === undefined ? null : section.find(kitchen, id);
  if (one !== null && !one.ok) return one;
  const entries = one === null ? section.entries(kitchen) : [one.value];
  const lines = section.lines(kitchen, entries, shell);
  const text = entries.length === 0 ? noneYet(what, plural) : lines.join("\n");
  return answered(section.folder, shell, text, { [plural]: entries });
};

const put = async <Entry extends { readonly id: string }>(
  section: Section<Entry>,
  id: string,
  edit: KitchenEdit,
): Promise<Outcome<CommandResult>> => {
  const { plural, shell } = section;
  const edited = await editKitchen(folderOf(section.folder), edit);
  if (!edited.ok) return edited;
  const { before, after } = edited.value;
  const entry = section.find(after, id);
  if (!entry.ok) return entry;
  const isNew = !section.entries(before).some((one) => one.id === id);
  const lines = section.lines(after, [entry.value], shell);
  const text = [isNew ? "Entered:" : "Changed; it is now:", ...lines].join("\n");
  return answered(section.folder, shell, text, { [plural]: [entry.value] });
};

export const sectionCommand = async <Entry extends { readonly id: string }>(
  section: Section<Entry>,
): Promise<Outcome<CommandResult>> => {
  const { id, said, edit } = section;
  if (!said.ok) return said;
  if (Object.keys(said.value).length === 0) return list(section);
  if (!edit.ok) return edit;
  return id === undefined ? list(section) : put(section, id, edit.value);
};
