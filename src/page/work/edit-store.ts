/** One edit of the kitchen in the page's store, with the kitchen before and after it. */
import { editedKitchen } from "../../input/kitchen/edit-kitchen-text.ts";
import type { EditedKitchen, KitchenEdit } from "../../input/kitchen/edit-kitchen-text.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { kitchenFile } from "./memory-store.ts";
import type { MemoryStore } from "./memory-store.ts";

export const editStore = async (
  store: Pick<MemoryStore, "update">,
  edit: KitchenEdit,
): Promise<Outcome<EditedKitchen>> => {
  const results: EditedKitchen[] = [];
  const updated = await store.update((text) => {
    const edited = editedKitchen(text, kitchenFile, edit);
    if (!edited.ok) return edited;
    results.push(edited.value);
    return done(edited.value.text);
  });
  if (!updated.ok) return updated;
  const last = results.at(-1);
  return last === undefined ? failed("internal", { what: "an edit that never ran" }) : done(last);
};
