/**
 * A new water test into the kitchen: its readings are read and judged first,
 * copied next, listed last. Whatever fails, the kitchen is as it was.
 */
import type { TestEntry } from "../../kitchen/edits/entries.ts";
import { withTest } from "../../kitchen/edits/with-test.ts";
import type { Kitchen, WaterTest } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { parseSetting } from "../../kitchen/setting.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { applianceOf, containerOf } from "../known-ids.ts";
import { judgeTest } from "./judge-test.ts";
import type { JudgedBy } from "./judge-test.ts";
import { storedKitchen } from "./kitchen-store.ts";
import type { KeptRaw, KitchenStore } from "./kitchen-store.ts";
import { knownAlready } from "./known-files.ts";
import type { NewTest, NewTestFile, StoredTest } from "./new-test.ts";
import { storeCopies, takeBackAll } from "./raw-copies.ts";
import { readSource } from "./read-source.ts";
import type { ReadSource } from "./read-source.ts";
import { strayProbe } from "./test-probes.ts";
import { testEntry } from "./test-entry.ts";
import { waterTestOf } from "./water-test-of.ts";
import { unwatched } from "./work-watch.ts";
import type { WatchWork, WorkWatch } from "./work-watch.ts";

const readAll = async <Source>(
  store: Pick<KitchenStore<Source>, "openSource">,
  files: readonly NewTestFile<Source>[],
  watch: WorkWatch,
): Promise<Outcome<readonly ReadSource[]>> => {
  const all: ReadSource[] = [];
  for (const file of files) {
    // oxlint-disable-next-line no-await-in-loop -- two at once would only double the memory
    const read = await readSource(store, file, watch).finally(watch.onEnd);
    if (!read.ok) return read;
    all.push(read.value);
  }
  const stray = strayProbe(files, all);
  return stray.ok ? done(all) : stray;
};

const putTogether = async <Source>(
  store: Pick<KitchenStore<Source>, "openSource">,
  kitchen: Kitchen,
  test: NewTest<Source>,
  watch: WorkWatch,
): Promise<Outcome<WaterTest>> => {
  const appliance = applianceOf(kitchen, test.appliance);
  if (!appliance.ok) return appliance;
  const setting = parseSetting(appliance.value, test.setting, kitchen.shownUnit);
  if (!setting.ok) return setting;
  const container = containerOf(kitchen, test.container);
  if (!container.ok) return container;
  const read = await readAll(store, test.files, watch);
  if (!read.ok) return read;
  const together = waterTestOf(test, setting.value, read.value, kitchen);
  return knownAlready(kitchen, together.files) ?? done(together);
};

/** The edit itself; looks again, on the newest text, whether another was quicker with the same file. */
const listTest =
  (file: string, test: WaterTest, entry: TestEntry) =>
  (text: string): Outcome<string> => {
    const kitchen = parseKitchen(text, file);
    if (!kitchen.ok) return kitchen;
    return knownAlready(kitchen.value, test.files) ?? withTest(text, file, test.id, entry);
  };

/** Copies and lists a test that was read and judged. */
const keep = async <Source, Raw extends KeptRaw>(
  store: KitchenStore<Source, Raw>,
  file: string,
  said: NewTest<Source>,
  test: WaterTest,
): Promise<Outcome<readonly string[]>> => {
  const copies = await storeCopies(store, said.files, test);
  if (!copies.ok) return copies;
  const paths = copies.value.map(({ path }) => path);
  const edited = await store.update(listTest(file, test, testEntry(said, test, paths)));
  if (edited.ok) return done(paths);
  await takeBackAll(store, copies.value);
  return edited;
};

/**
 * Reads every file of `newTest`, checks it against the kitchen, judges the
 * night for the kitchen's cultures, then copies the files and lists the test.
 * Fails with whatever stands in the way: a file that cannot be read, one the
 * kitchen has already ("file-known"), loggers that do not fit together, names
 * that are not in the kitchen; nothing is stored then.
 */
export const storeTest = async <Source, Raw extends KeptRaw>(
  store: KitchenStore<Source, Raw>,
  newTest: NewTest<Source>,
  judgedBy: JudgedBy,
  watch: WatchWork = unwatched,
): Promise<Outcome<StoredTest>> => {
  const opened = await storedKitchen(store);
  if (!opened.ok) return opened;
  const { kitchen, file, text } = opened.value;
  const test = await putTogether(store, kitchen, newTest, watch("reading"));
  if (!test.ok) return test;
  // Would it be listed? A name that is taken must not cost a copy.
  const listed = listTest(file, test.value, testEntry(newTest, test.value, []))(text);
  if (!listed.ok) return listed;
  const { files } = newTest;
  const judging = watch("judging");
  const reading = await judgeTest(store, kitchen, test.value, files, judgedBy, judging);
  if (!reading.ok) return reading;
  const paths = await keep(store, file, newTest, test.value);
  if (!paths.ok) return paths;
  return done({ id: test.value.id, files: paths.value, reading: reading.value });
};
