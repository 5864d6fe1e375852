/** `rename`: another name for something in the kitchen. */
import * as z from "zod";
import { renamed } from "../../kitchen/edits/renamed.ts";
import { answered, commandRun } from "../command-run.ts";
import { flag } from "../option-readers.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf, kitchenShapes } from "./kitchen-folder.ts";
import { sectionOf } from "./sections.ts";

const shape = z.object({ ...kitchenShapes, everywhere: flag });

export const rename = commandRun(shape, [], async (words, options, shell) => {
  const [typed = "", from = "", to = ""] = words;
  const section = sectionOf(typed);
  if (!section.ok) return section;
  const { everywhere } = options;
  const edited = await editKitchen(folderOf(options), ({ text, file }) =>
    renamed(text, file, section.value, from, to, { everywhere }),
  );
  if (!edited.ok) return edited;
  return answered(options, shell, `${from} is now called ${to}.`, { renamed: { from, to } });
});
