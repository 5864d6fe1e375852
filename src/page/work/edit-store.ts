/** One edit of the kitchen in the page's store, with the kitchen before and after it. */
import { editThrough } from "../../input/kitchen/edit-kitchen-text.ts";
import type { EditedKitchen, KitchenEdit } from "../../input/kitchen/edit-kitchen-text.ts";
import type { Outcome } from "../../problem.ts";
import { kitchenFile } from "./memory-store.ts";
import type { MemoryStore } from "./memory-store.ts";

export const editStore = (
  store: Pick<MemoryStore, "update">,
  edit: KitchenEdit,
): Promise<Outcome<EditedKitchen>> => editThrough(store.update, kitchenFile, edit);
