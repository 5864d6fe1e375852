/** `remove`: something out of the kitchen that nothing else needs. */
import { removeEdit, removeShape } from "../../input/kitchen/remove-edit.ts";
import { sectionOf } from "../../input/kitchen/sections.ts";
import { answered, commandRun } from "../command-run.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf } from "./kitchen-folder.ts";

export const remove = commandRun(removeShape, [], async (words, options, shell) => {
  const [typed = "", id = ""] = words;
  const edit = removeEdit(words);
  if (!edit.ok) return edit;
  const edited = await editKitchen(folderOf(options), edit.value);
  if (!edited.ok) return edited;
  const section = sectionOf(typed);
  const isTest = section.ok && section.value === "tests";
  const kept = edited.value.before.tests
    .filter((test) => isTest && test.id === id)
    .flatMap(({ files }) => files.map(({ path }) => path));
  const note = kept.length === 0 ? "" : ` Its readings stay where they are: ${kept.join(", ")}.`;
  const text = `${id} was taken out.${note} The version before stands in kitchen.previous.yaml.`;
  return answered(options, shell, text, { removed: id });
});
