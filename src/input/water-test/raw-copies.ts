/** Copies of a test's files in the kitchen, all of them or none. */
import type { WaterTest } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { KeptRaw, KitchenStore } from "./kitchen-store.ts";
import type { NewTestFile } from "./new-test.ts";

/** Takes back what was copied for a test that is not to be. */
export const takeBackAll = async <Raw extends KeptRaw>(
  store: Pick<KitchenStore<never, Raw>, "takeBack">,
  copies: readonly Raw[],
): Promise<void> => {
  for (const copy of copies) {
    // A copy that cannot be removed is a stray file, no lost data; the first problem is the one to tell.
    // oxlint-disable-next-line no-await-in-loop -- each waits for the kitchen to be free
    await store.takeBack(copy);
  }
};

/** Fails, and takes back, where a file is no longer what was read and judged. */
export const storeCopies = async <Source, Raw extends KeptRaw>(
  store: Pick<KitchenStore<Source, Raw>, "keepRaw" | "takeBack">,
  files: readonly NewTestFile<Source>[],
  test: WaterTest,
): Promise<Outcome<readonly Raw[]>> => {
  const copies: Raw[] = [];
  for (const [at, file] of files.entries()) {
    // oxlint-disable-next-line no-await-in-loop -- each waits for the kitchen to be free
    const copy = await store.keepRaw(file);
    if (copy.ok) copies.push(copy.value);
    const same = copy.ok && copy.value.sha256 === test.files[at]?.sha256;
    if (same) continue;
    // oxlint-disable-next-line no-await-in-loop -- the last step of the loop
    await takeBackAll(store, copies);
    return copy.ok ? failed("file-changed-meanwhile", { file: file.name }) : copy;
  }
  return done(copies);
};
