/** Making names last: a rename is on the disk only when its folder is. */
import { open } from "node:fs/promises";

/** Flushes a folder's entries where the system lets a folder be flushed; elsewhere does nothing. */
export const syncFolder = async (folder: string): Promise<void> => {
  try {
    const handle = await open(folder, "r");
    await handle.sync().finally(() => handle.close());
  } catch {
    // Windows and some network drives refuse; there the rename alone has to do.
  }
};
