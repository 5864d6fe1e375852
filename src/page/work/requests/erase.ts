/** Forgets the kitchen here and in the browser. */
import { changedState } from "../kitchen-state.ts";
import type { Handler } from "../workroom.ts";

const stillThere = (why: string): string =>
  `The kitchen is gone from this page, but not from the browser's store: ${why}. To be sure, clear this page's data in the browser's own settings.`;

export const erase: Handler<"erase"> = async (room) => {
  const why = await room.store.erase();
  room.desk.night = null;
  room.desk.kitchen = null;
  return changedState(room, why === null ? [] : [stillThere(why)]);
};
