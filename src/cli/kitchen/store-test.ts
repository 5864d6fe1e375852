/**
 * A new water test into the kitchen: its readings are read and judged first,
 * copied next, listed last. Whatever fails, the kitchen is as it was.
 */
import { basename } from "node:path";
import { kitchenPath } from "../../folder/kitchen-bytes.ts";
import { updateKitchen } from "../../folder/kitchen-file.ts";
import type { TestEntry } from "../../kitchen/edits/entries.ts";
import { withTest } from "../../kitchen/edits/with-test.ts";
import type { Kitchen, WaterTest } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { parseSetting } from "../../kitchen/setting.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { Shell } from "../command-result.ts";
import { startProgress } from "../progress.ts";
import { applianceOf, containerOf } from "./known-ids.ts";
import { openKitchen } from "./kitchen-folder.ts";
import type { NewTest, NewTestFile, StoredTest } from "./new-test.ts";
import { storeCopies, takeBack } from "./raw-copies.ts";
import { readSource } from "./read-source.ts";
import type { ReadSource } from "./read-source.ts";
import { strayProbe } from "./test-probes.ts";
import { testEntry } from "./test-entry.ts";
import { judgeTest } from "./judge-test.ts";
import { waterTestOf } from "./water-test-of.ts";

const readAll = async (
  files: readonly NewTestFile[],
  shell: Shell,
): Promise<Outcome<readonly ReadSource[]>> => {
  const all: ReadSource[] = [];
  let total = 0;
  const progress = startProgress(shell.progress, () => total, Date.now);
  const opened = (bytes: number): void => {
    total += bytes;
  };
  for (const file of files) {
    // oxlint-disable-next-line no-await-in-loop -- two at once would only double the memory
    const read = await readSource(file, progress.add, opened).finally(progress.end);
    if (!read.ok) return read;
    all.push(read.value);
  }
  const stray = strayProbe(files, all);
  return stray.ok ? done(all) : stray;
};

/** The same bytes are the same night, under whatever name. */
const knownAlready = (
  { tests }: Kitchen,
  files: readonly { readonly path: string; readonly sha256: string }[],
): Outcome<never> | null => {
  for (const [at, { path, sha256 }] of files.entries()) {
    for (const { id: test, files: listed } of tests) {
      const known = listed.find((one) => one.sha256 === sha256);
      if (known === undefined) continue;
      return failed("file-known", { file: basename(path), test, stored: known.path });
    }
    const twin = files.slice(0, at).find((other) => other.sha256 === sha256);
    if (twin === undefined) continue;
    const why = "they hold the same readings, byte for byte";
    const [first, second] = [basename(twin.path), basename(path)];
    return failed("options-contradict", { first, second, why });
  }
  return null;
};

const putTogether = async (
  kitchen: Kitchen,
  test: NewTest,
  shell: Shell,
): Promise<Outcome<WaterTest>> => {
  const appliance = applianceOf(kitchen, test.appliance);
  if (!appliance.ok) return appliance;
  const setting = parseSetting(appliance.value, test.setting, kitchen.shownUnit);
  if (!setting.ok) return setting;
  const container = containerOf(kitchen, test.container);
  if (!container.ok) return container;
  const read = await readAll(test.files, shell);
  if (!read.ok) return read;
  const together = waterTestOf(test, setting.value, read.value, kitchen);
  return knownAlready(kitchen, together.files) ?? done(together);
};

/** The edit itself; looks again, under the lock, whether another was quicker with the same file. */
const listTest =
  (file: string, test: WaterTest, entry: TestEntry) =>
  (text: string): Outcome<string> => {
    const kitchen = parseKitchen(text, file);
    if (!kitchen.ok) return kitchen;
    return knownAlready(kitchen.value, test.files) ?? withTest(text, file, test.id, entry);
  };

/** Copies and lists a test that was read and judged. */
const keep = async (
  folder: string,
  said: NewTest,
  test: WaterTest,
): Promise<Outcome<readonly string[]>> => {
  const copies = await storeCopies(folder, said.files, test);
  if (!copies.ok) return copies;
  const paths = copies.value.map(({ path }) => path);
  const edit = listTest(kitchenPath(folder), test, testEntry(said, test, paths));
  const edited = await updateKitchen(folder, edit);
  if (edited.ok) return done(paths);
  await takeBack(folder, copies.value);
  return edited;
};

/**
 * Reads every file of `newTest`, checks it against the kitchen, judges the
 * night for the kitchen's cultures, then copies the files into readings/ and
 * lists the test. Fails with whatever stands in the way: a file that cannot be
 * read, one the kitchen has already ("file-known"), loggers that do not fit
 * together, names that are not in the kitchen; nothing is stored then.
 */
export const storeTest = async (
  folder: string,
  newTest: NewTest,
  shell: Shell,
): Promise<Outcome<StoredTest>> => {
  const opened = await openKitchen(folder);
  if (!opened.ok) return opened;
  const { kitchen, file, text } = opened.value;
  const test = await putTogether(kitchen, newTest, shell);
  if (!test.ok) return test;
  // Would it be listed? A name that is taken must not cost a copy.
  const listed = listTest(file, test.value, testEntry(newTest, test.value, []))(text);
  if (!listed.ok) return listed;
  const reading = await judgeTest(kitchen, test.value, newTest.files, shell);
  if (!reading.ok) return reading;
  const paths = await keep(folder, newTest, test.value);
  if (!paths.ok) return paths;
  return done({ id: test.value.id, files: paths.value, reading: reading.value });
};
