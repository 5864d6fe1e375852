/** Who speaks of a thing in the kitchen, in words. */
import { failed } from "../../problem.ts";
import { nearestName } from "../../nearest-name.ts";
import { pathInWords, printable } from "../fault.ts";
import { idsIn, referencesIn, thingOf } from "../schema/references.ts";
import type { Reference, Section } from "../schema/references.ts";
import type { Editing } from "./edit.ts";

const shown = 20;

/** References to one id, in the file's order. */
export const usesOf = (editing: Editing, section: Section, id: string): readonly Reference[] =>
  referencesIn(editing.source.data).filter((one) => one.to === section && one.id === id);

const owner = ({ path }: Reference): string => pathInWords(path.slice(0, 2));

/** One line for each water test or batch, with the line on which the name stands first. */
const usesInWords = (editing: Editing, uses: readonly Reference[]): string => {
  const first = new Map<string, number>();
  for (const use of uses) {
    const line = editing.source.lineOf({ path: use.path, at: "value" });
    if (!first.has(owner(use))) first.set(owner(use), line);
  }
  const lines = [...first].slice(0, shown).map(([name, line]) => `- Line ${line}, ${name}.`);
  const left = first.size - lines.length;
  return [...lines, ...(left > 0 ? [`- and ${left} more.`] : [])].join("\n");
};

export const inUse = (
  editing: Editing,
  section: Section,
  id: string,
  uses: readonly Reference[],
  advice: string,
) =>
  failed("kitchen-in-use", {
    what: thingOf[section].replace(/^an? /, "the "),
    id: printable(id),
    list: usesInWords(editing, uses),
    advice,
  });

/** There is no entry of that id. */
export const notThere = (editing: Editing, section: Section, id: string) => {
  const ids = idsIn(editing.source.data, section);
  return failed("id-unknown", {
    file: editing.file,
    what: thingOf[section],
    id: printable(id),
    suggestion: nearestName(id, ids),
    known: ids.slice(0, shown).map(printable).join(", "),
  });
};
