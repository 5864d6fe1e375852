/** `remove`: something out of the kitchen that nothing else needs. */
import * as z from "zod";
import { removed } from "../../kitchen/edits/removed.ts";
import { answered, commandRun } from "../command-run.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf, kitchenShapes } from "./kitchen-folder.ts";
import { sectionOf } from "./sections.ts";

export const remove = commandRun(z.object(kitchenShapes), [], async (words, options, shell) => {
  const [typed = "", id = ""] = words;
  const section = sectionOf(typed);
  if (!section.ok) return section;
  const edited = await editKitchen(folderOf(options), ({ text, file }) =>
    removed(text, file, section.value, id),
  );
  if (!edited.ok) return edited;
  const kept = edited.value.before.tests
    .filter((test) => section.value === "tests" && test.id === id)
    .flatMap(({ files }) => files.map(({ path }) => path));
  const note = kept.length === 0 ? "" : ` Its readings stay where they are: ${kept.join(", ")}.`;
  const text = `${id} was taken out.${note} The version before stands in kitchen.previous.yaml.`;
  return answered(options, shell, text, { removed: id });
});
