/** kitchen.yaml, a zipped kitchen folder, or readings that the kitchen lists. */
import { storedKitchen } from "../../../input/water-test/kitchen-store.ts";
import type { Kitchen } from "../../../kitchen/kitchen.ts";
import { parseKitchen } from "../../../kitchen/parse-kitchen.ts";
import { done } from "../../../problem.ts";
import type { Outcome } from "../../../problem.ts";
import type { ChosenFile } from "../../protocol.ts";
import { baseName } from "../chosen-names.ts";
import type { RawFile } from "../keeper.ts";
import { changedState, missingIn } from "../kitchen-state.ts";
import { matchedReadings } from "../matched-readings.ts";
import type { MatchedReadings } from "../matched-readings.ts";
import { isZip, openedFiles } from "../opened-files.ts";
import { openedRemarks } from "../opened-remarks.ts";
import { openedText } from "../opened-text.ts";
import { unzipped } from "../unzip.ts";
import type { Handler, Workroom } from "../workroom.ts";

const withoutZips = async (
  files: readonly ChosenFile[],
): Promise<Outcome<readonly ChosenFile[]>> => {
  const all: ChosenFile[] = [];
  for (const file of files) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other: memory
    const inside = isZip(file.name) ? await unzipped(file) : done([file]);
    if (!inside.ok) return inside;
    all.push(...inside.value);
  }
  return done(all);
};

interface NewKitchen {
  readonly text: string;
  readonly kitchen: Kitchen;
  /** What its file is called; null: the one that is open already. */
  readonly name: string | null;
}

const kitchenOf = async (
  file: ChosenFile | null,
  { store }: Workroom,
): Promise<Outcome<NewKitchen>> => {
  if (file === null) {
    const stored = await storedKitchen(store);
    return stored.ok ? done({ ...stored.value, name: null }) : stored;
  }
  const name = baseName(file.name);
  const text = await openedText({ ...file, name });
  if (!text.ok) return text;
  const kitchen = parseKitchen(text.value, name);
  return kitchen.ok ? done({ text: text.value, kitchen: kitchen.value, name }) : kitchen;
};

/** Files that are here already and that the new kitchen lists too. */
const stillListed = (
  { tests }: Kitchen,
  raw: ReadonlyMap<string, RawFile>,
): ReadonlyMap<string, RawFile> => {
  const listed = tests.flatMap(({ files }) => files);
  return new Map(
    listed.flatMap(({ sha256, path }) => {
      const one = raw.get(sha256);
      return one === undefined ? [] : [[sha256, { ...one, path }]];
    }),
  );
};

/** Only where nothing came of it: a file with other bytes than were listed is never used. */
const refusal = (
  { name }: NewKitchen,
  { found, problems: [first] }: MatchedReadings,
): Outcome<never> | null =>
  name === null && found.size === 0 && first !== undefined ? { ok: false, problem: first } : null;

const takeIn = (
  { store }: Workroom,
  { text, kitchen, name }: NewKitchen,
  { found }: MatchedReadings,
): Promise<void> => {
  if (name === null) return store.takeIn(found);
  const raw = new Map([...stillListed(kitchen, store.raw()), ...found]);
  return store.replace({ text, raw });
};

export const open: Handler<"open"> = async (room, { files }) => {
  const all = await withoutZips(files);
  if (!all.ok) return all;
  const sorted = openedFiles(all.value);
  if (!sorted.ok) return sorted;
  const { kitchen: file, others } = sorted.value;
  const opened = await kitchenOf(file, room);
  if (!opened.ok) return opened;
  const total = others.reduce((sum, { content }) => sum + content.size, 0);
  let read = 0;
  const matched = await matchedReadings(opened.value.kitchen, others, (bytes) => {
    read += bytes;
    room.progress(read, total);
  });
  const refused = refusal(opened.value, matched);
  if (refused !== null) return refused;
  await takeIn(room, opened.value, matched);
  const missing = missingIn(opened.value.kitchen, (sha256) => room.store.raw().has(sha256));
  return changedState(room, openedRemarks(opened.value, matched, missing));
};
