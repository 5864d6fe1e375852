/** Something out of the kitchen that nothing else needs. */
import * as z from "zod";
import { removed } from "../../kitchen/edits/removed.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";
import type { KitchenEdit } from "./edit-kitchen-text.ts";
import { sectionOf } from "./sections.ts";

export const removeShape = z.object(kitchenShapes);

/** `words`: the section and the id. The files of a test stay where they are. */
export const removeEdit = ([typed = "", id = ""]: readonly string[]): Outcome<KitchenEdit> => {
  const section = sectionOf(typed);
  if (!section.ok) return section;
  return done(({ text, file }) => removed(text, file, section.value, id));
};
