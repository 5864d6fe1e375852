/** Another name for an entry of the kitchen, or the entry taken out. */
import { kitchenEdits } from "../../../input/kitchen/kitchen-edits.ts";
import { localDay } from "../../../input/local-day.ts";
import type { Kitchen } from "../../../kitchen/kitchen.ts";
import { editStore } from "../edit-store.ts";
import { changedState } from "../kitchen-state.ts";
import { questionInWords } from "../question-words.ts";
import type { Handler } from "../workroom.ts";

const edits = kitchenEdits(questionInWords);

/** Where tests and batches use the old name they get the new one: a page has nobody to ask for that again. */
export const rename: Handler<"rename"> = async (room, { section, from, to }) => {
  const wanted = edits.rename([section, from, to], { everywhere: true }, localDay(room.now()));
  if (!wanted.ok) return wanted;
  const edited = await editStore(room.store, wanted.value);
  if (!edited.ok) return edited;
  return changedState(room, [`${from} is now called ${to}.`]);
};

const keptReadings = ({ tests }: Kitchen, section: string, id: string): string => {
  const paths = tests
    .filter((test) => section === "test" && test.id === id)
    .flatMap(({ files }) => files.map(({ path }) => path));
  if (paths.length === 0) return "";
  return ` Its readings stay in the kitchen's folder: ${paths.join(", ")}.`;
};

export const remove: Handler<"remove"> = async (room, { section, id }) => {
  const wanted = edits.remove([section, id], {}, localDay(room.now()));
  if (!wanted.ok) return wanted;
  const edited = await editStore(room.store, wanted.value);
  if (!edited.ok) return edited;
  const kept = keptReadings(edited.value.before, section, id);
  return changedState(room, [`${id} was taken out.${kept}`]);
};
