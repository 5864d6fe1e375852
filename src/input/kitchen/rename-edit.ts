/** Another name for something in the kitchen. */
import * as z from "zod";
import { renamed } from "../../kitchen/edits/renamed.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";
import { flag } from "../option-readers.ts";
import type { KitchenEdit } from "./edit-kitchen-text.ts";
import { sectionOf } from "./sections.ts";

export const renameShape = z.object({ ...kitchenShapes, everywhere: flag });

export type RenameOptions = z.infer<typeof renameShape>;

/** `words`: the section, the id now, the new one. `everywhere`: also where tests and batches name it. */
export const renameEdit = (
  [typed = "", from = "", to = ""]: readonly string[],
  { everywhere }: RenameOptions,
): Outcome<KitchenEdit> => {
  const section = sectionOf(typed);
  if (!section.ok) return section;
  return done(({ text, file }) => renamed(text, file, section.value, from, to, { everywhere }));
};
