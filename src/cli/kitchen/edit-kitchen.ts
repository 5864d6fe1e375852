/** One change of kitchen.yaml: read, edited and written under the folder's lock. */
import { kitchenPath } from "../../folder/kitchen-bytes.ts";
import { updateKitchen } from "../../folder/kitchen-file.ts";
import { editThrough } from "../../input/kitchen/edit-kitchen-text.ts";
import type { EditedKitchen, KitchenEdit } from "../../input/kitchen/edit-kitchen-text.ts";
import type { Outcome } from "../../problem.ts";

/** Gives the kitchen before and after; where the edit fails, nothing is written. */
export const editKitchen = (folder: string, edit: KitchenEdit): Promise<Outcome<EditedKitchen>> =>
  editThrough((change) => updateKitchen(folder, change), kitchenPath(folder), edit);
