/** An entry of the kitchen added or changed; a batch logged, changed or taken out. */
import { batchNumber, onlyOfBatch, removedBatchText } from "../../../input/kitchen/batch-edit.ts";
import type { EditedKitchen, KitchenEdit } from "../../../input/kitchen/edit-kitchen-text.ts";
import { kitchenEdits } from "../../../input/kitchen/kitchen-edits.ts";
import { localDay } from "../../../input/local-day.ts";
import { parseKitchen } from "../../../kitchen/parse-kitchen.ts";
import type { Requests } from "../../protocol.ts";
import { batchRemarks, takenRemarks } from "../batch-remarks.ts";
import { editStore } from "../edit-store.ts";
import { changedState } from "../kitchen-state.ts";
import { kitchenFile } from "../memory-store.ts";
import { questionWords } from "../../../report/wording/question-words.ts";
import { thermometerRemarks } from "../thermometer-remarks.ts";
import type { Handler, Workroom } from "../workroom.ts";

type Asked = Requests["edit"]["asked"];

/** A number is that of the batch which the screen shows, even if another window has changed the log since. */
const ofShownBatch = (
  { section, words: [word] }: Asked,
  edit: KitchenEdit,
  { store }: Workroom,
): KitchenEdit => {
  if (section !== "batch" || word === undefined) return edit;
  const shown = parseKitchen(store.text(), kitchenFile);
  const number = shown.ok ? batchNumber(word, shown.value) : shown;
  if (!shown.ok || !number.ok) return edit;
  return onlyOfBatch(number.value, shown.value.batches[number.value - 1]!, edit);
};

const ofBatch = (
  { words: [word], options }: Asked,
  { before, after }: EditedKitchen,
  { store }: Workroom,
  today: string,
): Promise<readonly string[]> => {
  const number = word === undefined ? after.batches.length : Number(word);
  if (options["remove"] === true) {
    return Promise.resolve([removedBatchText({ before, after }, number)]);
  }
  const taken = word === undefined ? takenRemarks(before, options, today) : [];
  const open = (file: Parameters<typeof store.openListed>[0]) =>
    store.openListed(file, () => undefined);
  return batchRemarks(after, number, taken, today, open);
};

const remarksOf = async (
  asked: Asked,
  edited: EditedKitchen,
  room: Workroom,
  today: string,
): Promise<readonly string[]> => {
  if (asked.section === "batch") return ofBatch(asked, edited, room, today);
  if (asked.section !== "thermometer") return [];
  return thermometerRemarks(edited.after, asked.words[0] ?? "", today);
};

export const edit: Handler<"edit"> = async (room, asked) => {
  const today = localDay(room.now());
  const { section, words, options } = asked;
  const wanted = kitchenEdits(questionWords)[section](words, options, today);
  if (!wanted.ok) return wanted;
  const edited = await editStore(room.store, ofShownBatch(asked, wanted.value, room));
  if (!edited.ok) return edited;
  return changedState(room, await remarksOf(asked, edited.value, room, today));
};
