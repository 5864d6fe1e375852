/** `rename`: another name for something in the kitchen. */
import { renameEdit, renameShape } from "../../input/kitchen/rename-edit.ts";
import { answered, commandRun } from "../command-run.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { folderOf } from "./kitchen-folder.ts";

export const rename = commandRun(renameShape, [], async (words, options, shell) => {
  const [, from = "", to = ""] = words;
  const edit = renameEdit(words, options);
  if (!edit.ok) return edit;
  const edited = await editKitchen(folderOf(options), edit.value);
  if (!edited.ok) return edited;
  return answered(options, shell, `${from} is now called ${to}.`, { renamed: { from, to } });
});
