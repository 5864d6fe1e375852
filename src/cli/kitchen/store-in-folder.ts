/** A new water test into the kitchen's folder, with a passing line on long work. */
import type { NewTest, StoredTest } from "../../input/water-test/new-test.ts";
import { localDay } from "../../input/local-day.ts";
import { storeTest } from "../../input/water-test/store-test.ts";
import type { WatchWork } from "../../input/water-test/work-watch.ts";
import type { Outcome } from "../../problem.ts";
import type { Shell } from "../command-result.ts";
import { startProgress } from "../progress.ts";
import { folderStore } from "./folder-store.ts";
import type { FolderSource } from "./folder-store.ts";

/** While judging, bytes that were counted once are not counted again: it is the work that takes long. */
const watchWith =
  (shell: Shell): WatchWork =>
  () => {
    let total = 0;
    const progress = startProgress(shell.progress, () => total, Date.now);
    const onOpened = (bytes: number): void => {
      total += bytes;
    };
    return { onOpened, onBytes: progress.add, onEnd: progress.end };
  };

export const storeInFolder = (
  folder: string,
  newTest: NewTest<FolderSource>,
  shell: Shell,
): Promise<Outcome<StoredTest>> => {
  const { version } = shell;
  const today = localDay(shell.now());
  return storeTest(folderStore(folder), newTest, { version, today }, watchWith(shell));
};
