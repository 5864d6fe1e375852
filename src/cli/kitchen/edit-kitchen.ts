/** One change of kitchen.yaml: read, edited and written under the folder's lock. */
import { kitchenPath } from "../../folder/kitchen-bytes.ts";
import { updateKitchen } from "../../folder/kitchen-file.ts";
import { editedKitchen } from "../../input/kitchen/edit-kitchen-text.ts";
import type { EditedKitchen, KitchenEdit } from "../../input/kitchen/edit-kitchen-text.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

/** Gives the kitchen before and after; where the edit fails, nothing is written. */
export const editKitchen = async (
  folder: string,
  edit: KitchenEdit,
): Promise<Outcome<EditedKitchen>> => {
  const file = kitchenPath(folder);
  let result: EditedKitchen | null = null;
  const updated = await updateKitchen(folder, (text) => {
    const edited = editedKitchen(text, file, edit);
    if (!edited.ok) return edited;
    result = edited.value;
    return done(edited.value.text);
  });
  if (!updated.ok) return updated;
  return result === null ? failed("internal", { what: "an edit that never ran" }) : done(result);
};
