/** Choices that several forms offer. */
import type { Choice } from "../form/field-types.ts";

export const same = (words: readonly string[]): readonly Choice[] =>
  words.map((word) => ({ value: word, label: word }));

export const answers = same(["yes", "no", "unknown"]);

/** Entries of the kitchen by their names. */
export const entryChoices = (
  entries: readonly { readonly id: string; readonly name: string }[],
): readonly Choice[] => entries.map(({ id, name }) => ({ value: id, label: name }));
