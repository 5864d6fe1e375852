/** Another id for an entry of kitchen.yaml. */
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { DataPath } from "../fault.ts";
import { idsIn } from "../schema/references.ts";
import type { Section } from "../schema/references.ts";
import { isPlainMap } from "../text/plain-data.ts";
import type { PlainData } from "../text/plain-data.ts";
import type { Change } from "./change.ts";
import { edited, openForEditing } from "./edit.ts";
import type { Editing } from "./edit.ts";
import { taken } from "./entry-edit.ts";
import { inUse, notThere, usesOf } from "./in-use.ts";

export interface RenameOptions {
  /** Water tests and batches that use the id get the new one too. */
  readonly everywhere?: boolean;
}

const ofCulture = (editing: Editing, from: string, to: string): Change => {
  const index = idsIn(editing.source.data, "cultures").indexOf(from);
  const item = (editing.source.data["cultures"] as readonly PlainData[])[index] ?? null;
  const path: DataPath = isPlainMap(item) ? ["cultures", index, "id"] : ["cultures", index];
  return { kind: "value", path, value: to };
};

/**
 * Renames one entry. Refused where the new id is taken, and, unless
 * `everywhere` is asked for, where water tests or batches use the old one
 * ("kitchen-in-use", with their list).
 */
export const renamed = (
  text: string,
  file: string,
  section: Section,
  from: string,
  to: string,
  options: RenameOptions = {},
): Outcome<string> => {
  const opened = openForEditing(text, file);
  if (!opened.ok) return opened;
  const editing = opened.value;
  const ids = idsIn(editing.source.data, section);
  if (!ids.includes(from)) return notThere(editing, section, from);
  if (from === to) return done(text);
  if (ids.includes(to)) return taken(editing, section, to);
  const uses = usesOf(editing, section, from);
  if (uses.length > 0 && options.everywhere !== true) {
    return inUse(editing, section, from, uses, "To rename it there too say --everywhere");
  }
  const own: Change =
    section === "cultures"
      ? ofCulture(editing, from, to)
      : { kind: "key", path: [section, from], to };
  const others = uses.map(({ path }): Change => ({ kind: "value", path, value: to }));
  return edited(editing, [section, to], [[own, ...others]]);
};
