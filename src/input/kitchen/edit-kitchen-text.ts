/** One change of kitchen.yaml's text: read, edited, read again. */
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

/** The text that an edit finds, already read. */
export interface FoundKitchen {
  readonly text: string;
  /** Path of kitchen.yaml, for messages. */
  readonly file: string;
  readonly kitchen: Kitchen;
}

/** Gives the new text, or the problem why there is none. Pure, so that it may run again on a newer text. */
export type KitchenEdit = (found: FoundKitchen) => Outcome<string>;

export interface EditedKitchen {
  readonly before: Kitchen;
  readonly after: Kitchen;
}

/**
 * The text after an edit, with the kitchen before and after it. Fails where
 * either text is no kitchen, or with the edit's own problem.
 */
export const editedKitchen = (
  text: string,
  file: string,
  edit: KitchenEdit,
): Outcome<EditedKitchen & { readonly text: string }> => {
  const before = parseKitchen(text, file);
  if (!before.ok) return before;
  const edited = edit({ text, file, kitchen: before.value });
  if (!edited.ok) return edited;
  const after = parseKitchen(edited.value, file);
  if (!after.ok) return after;
  return done({ text: edited.value, before: before.value, after: after.value });
};

/** Hands the newest text to an edit and puts the new one in its place; where the edit fails, nothing is put. */
export type UpdateText = (edit: (text: string) => Outcome<string>) => Promise<Outcome<void>>;

/** One edit where a kitchen is kept, with the kitchen before and after it; of an edit that ran again, the last. */
export const editThrough = async (
  update: UpdateText,
  file: string,
  edit: KitchenEdit,
): Promise<Outcome<EditedKitchen>> => {
  const results: EditedKitchen[] = [];
  const updated = await update((text) => {
    const edited = editedKitchen(text, file, edit);
    if (!edited.ok) return edited;
    results.push(edited.value);
    return done(edited.value.text);
  });
  if (!updated.ok) return updated;
  const last = results.at(-1);
  return last === undefined ? failed("internal", { what: "an edit that never ran" }) : done(last);
};
