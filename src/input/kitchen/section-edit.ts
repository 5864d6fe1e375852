/** What the edits of appliances, containers and cultures have in common: one entry, added or changed. */
import type { EditOptions } from "../../kitchen/edits/entries.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { KitchenEdit } from "./edit-kitchen-text.ts";

export interface SectionEdit<Said> {
  /** "appliance". */
  readonly what: string;
  readonly id: string | undefined;
  readonly said: Outcome<Said>;
  readonly entries: (kitchen: Kitchen) => readonly { readonly id: string }[];
  /** What a new entry still lacks. */
  readonly incomplete: (said: Said, id: string) => Outcome<never> | null;
  readonly put: (
    text: string,
    file: string,
    id: string,
    said: Said,
    options: EditOptions,
  ) => Outcome<string>;
}

/** Something was said of an entry that has no name. */
export const nameMissing = (what: string) =>
  failed("option-missing", { option: `the ${what}'s name`, why: "it goes by that" });

/** Fails before any kitchen is read where what was said cannot be, or of what is not said. */
export const sectionEdit = <Said>(section: SectionEdit<Said>): Outcome<KitchenEdit> => {
  const { what, id, said, entries, incomplete, put } = section;
  if (!said.ok) return said;
  if (id === undefined) return nameMissing(what);
  return done(({ text, file, kitchen }) => {
    const isNew = !entries(kitchen).some((one) => one.id === id);
    const gap = isNew ? incomplete(said.value, id) : null;
    return gap ?? put(text, file, id, said.value, { replace: true });
  });
};
