/** What `appliance` and `container` have in common: to list, to show one, to add one or change it. */
import type { EditOptions } from "../../kitchen/edits/entries.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered } from "../command-run.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf, openKitchen } from "./kitchen-folder.ts";

interface Section<Entry extends { readonly id: string }, Said extends object> {
  /** "appliance", also the command's name. */
  readonly what: string;
  readonly plural: string;
  readonly folder: { readonly kitchen?: string | undefined; readonly json: boolean };
  readonly id: string | undefined;
  readonly said: Outcome<Said>;
  readonly entries: (kitchen: Kitchen) => readonly Entry[];
  readonly find: (kitchen: Kitchen, id: string) => Outcome<Entry>;
  /** What a new entry still lacks. */
  readonly incomplete: (said: Said, id: string) => Outcome<never> | null;
  readonly put: (
    text: string,
    file: string,
    id: string,
    said: Said,
    options: EditOptions,
  ) => Outcome<string>;
  readonly lines: (
    kitchen: Kitchen,
    entries: readonly Entry[],
    page: { readonly width: number; readonly ascii: boolean },
  ) => readonly string[];
  readonly shell: Shell;
}

const noneYet = (what: string, plural: string): string =>
  `There are no ${plural} in this kitchen yet; "holdband ${what} --help" shows how to enter one.`;

const list = async <Entry extends { readonly id: string }, Said extends object>(
  section: Section<Entry, Said>,
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

const put = async <Entry extends { readonly id: string }, Said extends object>(
  section: Section<Entry, Said>,
  id: string,
  said: Said,
): Promise<Outcome<CommandResult>> => {
  const { plural, shell } = section;
  const edited = await editKitchen(folderOf(section.folder), ({ text, file, kitchen }) => {
    const isNew = !section.entries(kitchen).some((one) => one.id === id);
    const gap = isNew ? section.incomplete(said, id) : null;
    return gap ?? section.put(text, file, id, said, { replace: true });
  });
  if (!edited.ok) return edited;
  const { before, after } = edited.value;
  const entry = section.find(after, id);
  if (!entry.ok) return entry;
  const isNew = !section.entries(before).some((one) => one.id === id);
  const lines = section.lines(after, [entry.value], shell);
  const text = [isNew ? "Entered:" : "Changed; it is now:", ...lines].join("\n");
  return answered(section.folder, shell, text, { [plural]: [entry.value] });
};

export const sectionCommand = async <Entry extends { readonly id: string }, Said extends object>(
  section: Section<Entry, Said>,
): Promise<Outcome<CommandResult>> => {
  const { what, id, said } = section;
  if (!said.ok) return said;
  const isSaid = Object.keys(said.value).length > 0;
  if (id === undefined && isSaid) {
    return failed("option-missing", { option: `the ${what}'s name`, why: "it goes by that" });
  }
  return id === undefined || !isSaid ? list(section) : put(section, id, said.value);
};
