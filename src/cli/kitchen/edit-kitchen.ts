/** One change of kitchen.yaml: read, edited and written under the folder's lock. */
import { kitchenPath } from "../../folder/kitchen-bytes.ts";
import { updateKitchen } from "../../folder/kitchen-file.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

export interface KitchenEdit {
  readonly text: string;
  /** Path of kitchen.yaml, for messages. */
  readonly file: string;
  readonly kitchen: Kitchen;
}

export interface EditedKitchen {
  readonly before: Kitchen;
  readonly after: Kitchen;
}

/** Gives the kitchen before and after; where the edit fails, nothing is written. */
export const editKitchen = async (
  folder: string,
  edit: (found: KitchenEdit) => Outcome<string>,
): Promise<Outcome<EditedKitchen>> => {
  const file = kitchenPath(folder);
  let edited: EditedKitchen | null = null;
  const updated = await updateKitchen(folder, (text) => {
    const before = parseKitchen(text, file);
    if (!before.ok) return before;
    const result = edit({ text, file, kitchen: before.value });
    if (!result.ok) return result;
    const after = parseKitchen(result.value, file);
    if (!after.ok) return after;
    edited = { before: before.value, after: after.value };
    return result;
  });
  if (!updated.ok) return updated;
  return edited === null ? failed("internal", { what: "an edit that never ran" }) : done(edited);
};
