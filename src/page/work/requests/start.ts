/** What was kept from the last visit, which is taken before any request; else a fresh kitchen. */
import { kitchenState } from "../kitchen-state.ts";
import type { Handler } from "../workroom.ts";

export const start: Handler<"start"> = (room) => Promise.resolve(kitchenState(room));
