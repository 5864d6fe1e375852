/** An entry of the kitchen taken out. */
import { kitchenEdits } from "../../../input/kitchen/kitchen-edits.ts";
import { localDay } from "../../../input/local-day.ts";
import type { Kitchen } from "../../../kitchen/kitchen.ts";
import { editStore } from "../edit-store.ts";
import { changedState } from "../kitchen-state.ts";
import { questionWords } from "../../../report/wording/question-words.ts";
import type { Handler } from "../workroom.ts";

const keptReadings = ({ tests }: Kitchen, section: string, id: string): string => {
  const paths = tests
    .filter((test) => section === "test" && test.id === id)
    .flatMap(({ files }) => files.map(({ path }) => path));
  if (paths.length === 0) return "";
  return ` Its readings stay in the kitchen's folder: ${paths.join(", ")}.`;
};

export const remove: Handler<"remove"> = async (room, { section, id }) => {
  const wanted = kitchenEdits(questionWords).remove([section, id], {}, localDay(room.now()));
  if (!wanted.ok) return wanted;
  const edited = await editStore(room.store, wanted.value);
  if (!edited.ok) return edited;
  const kept = keptReadings(edited.value.before, section, id);
  return changedState(room, [`${id} was taken out.${kept}`]);
};
