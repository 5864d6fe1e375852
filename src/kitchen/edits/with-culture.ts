/** A culture into kitchen.yaml. */
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { idsIn } from "../schema/references.ts";
import { isPlainMap } from "../text/plain-data.ts";
import type { PlainData } from "../text/plain-data.ts";
import { edited, openForEditing } from "./edit.ts";
import type { Editing } from "./edit.ts";
import type { CultureEntry, EditOptions } from "./entries.ts";
import { fieldSteps, saysTheSame, taken } from "./entry-edit.ts";
import type { Fields } from "./entry-edit.ts";
import type { EntryValue } from "./written-entry.ts";

const asWritten = (id: string, entry: CultureEntry): EntryValue => {
  const said = Object.values(entry).some((value) => value !== null && value !== undefined);
  return said ? ({ id, ...entry } as EntryValue) : id;
};

const changed = (
  editing: Editing,
  index: number,
  id: string,
  entry: CultureEntry,
): Outcome<string> => {
  const path = ["cultures", index];
  const item = (editing.source.data["cultures"] as readonly PlainData[])[index] ?? null;
  if (isPlainMap(item)) {
    return edited(editing, path, fieldSteps(editing, path, item, entry as Fields));
  }
  const value = asWritten(id, entry);
  return value === id
    ? done(editing.text)
    : edited(editing, path, [[{ kind: "value", path, value }]]);
};

/**
 * Adds a culture: the catalogue's as it is where the entry is empty, with own
 * figures, or one's own. An id that is there already is refused unless the
 * entry says the same, or `replace` is asked for.
 */
export const withCulture = (
  text: string,
  file: string,
  id: string,
  entry: CultureEntry,
  options: EditOptions = {},
): Outcome<string> => {
  const opened = openForEditing(text, file);
  if (!opened.ok) return opened;
  const editing = opened.value;
  const index = idsIn(editing.source.data, "cultures").indexOf(id);
  const path = ["cultures", index];
  const value = asWritten(id, entry);
  if (index === -1) {
    const steps = [[{ kind: "add item", path: ["cultures"], value }]] as const;
    return edited(editing, ["cultures", editing.kitchen.cultures.length], steps);
  }
  if (options.replace === true) return changed(editing, index, id, entry);
  const same = saysTheSame(editing, "cultures", id, { kind: "value", path, value });
  return same ? done(text) : taken(editing, "cultures", id);
};
