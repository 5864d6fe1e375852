/** Copies of a test's files in readings/, all of them or none. */
import { removeRawFile } from "../../folder/remove-raw-file.ts";
import { storeRawFile, storeRawText } from "../../folder/raw-files.ts";
import type { StoredRaw } from "../../folder/stored-raw.ts";
import type { WaterTest } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { sourceName } from "./read-source.ts";
import type { NewTestFile } from "./new-test.ts";

/** Takes back what was copied for a test that is not to be. */
export const takeBack = async (folder: string, copies: readonly StoredRaw[]): Promise<void> => {
  for (const copy of copies) {
    // A copy that cannot be removed is a stray file, no lost data; the first problem is the one to tell.
    // oxlint-disable-next-line no-await-in-loop -- each waits for the folder's lock
    await removeRawFile(folder, copy);
  }
};

const storeOne = (folder: string, file: NewTestFile): Promise<Outcome<StoredRaw>> =>
  "path" in file.source
    ? storeRawFile(folder, file.source.path)
    : storeRawText(folder, file.source.fileName, file.source.text);

/** Fails, and takes back, where a file is no longer what was read and judged. */
export const storeCopies = async (
  folder: string,
  files: readonly NewTestFile[],
  test: WaterTest,
): Promise<Outcome<readonly StoredRaw[]>> => {
  const copies: StoredRaw[] = [];
  for (const [at, file] of files.entries()) {
    // oxlint-disable-next-line no-await-in-loop -- each waits for the folder's lock
    const copy = await storeOne(folder, file);
    if (copy.ok) copies.push(copy.value);
    const same = copy.ok && copy.value.sha256 === test.files[at]?.sha256;
    if (same) continue;
    // oxlint-disable-next-line no-await-in-loop -- the last step of the loop
    await takeBack(folder, copies);
    return copy.ok ? failed("file-changed-meanwhile", { file: sourceName(file) }) : copy;
  }
  return done(copies);
};
