/** An entry out of kitchen.yaml. */
import type { Outcome } from "../../problem.ts";
import { idsIn } from "../schema/references.ts";
import type { Section } from "../schema/references.ts";
import { edited, openForEditing } from "./edit.ts";
import { inUse, notThere, usesOf } from "./in-use.ts";

/**
 * Takes an entry out, with the comments inside it. Refused where water tests
 * or batches use it ("kitchen-in-use", with their list).
 */
export const removed = (
  text: string,
  file: string,
  section: Section,
  id: string,
): Outcome<string> => {
  const opened = openForEditing(text, file);
  if (!opened.ok) return opened;
  const editing = opened.value;
  const index = idsIn(editing.source.data, section).indexOf(id);
  if (index === -1) return notThere(editing, section, id);
  const uses = usesOf(editing, section, id);
  if (uses.length > 0) return inUse(editing, section, id, uses, "Change that first");
  const path = [section, section === "cultures" ? index : id];
  return edited(editing, path, [[{ kind: "remove", path }]]);
};
