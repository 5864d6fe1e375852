/** Undoing a copy into readings/ that nobody relies on yet. */
import { rm } from "node:fs/promises";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { withFolderLock } from "./folder-lock.ts";
import { insideFolder } from "./inside-folder.ts";
import { readKitchenBytes } from "./kitchen-bytes.ts";
import { markOf } from "./stored-raw.ts";
import type { StoredRaw } from "./stored-raw.ts";
import { systemReason } from "./system-reason.ts";

const remove = async (folder: string, raw: StoredRaw): Promise<Outcome<void>> => {
  const path = await insideFolder(folder, raw.path);
  if (!path.ok) return path;
  try {
    const kitchen = await readKitchenBytes(folder);
    const isListed = !kitchen.ok || kitchen.value.text.includes(raw.sha256);
    if (isListed || (await markOf(path.value)) !== raw.mark) return done(undefined);
    await rm(path.value);
    return done(undefined);
  } catch (error) {
    return failed("file-unwritable", { file: path.value, why: systemReason(error) });
  }
};

/**
 * Takes a copy back that was made just now, for when the edit of kitchen.yaml
 * failed that was to list it. Stays where it was there before, where
 * kitchen.yaml lists it, or where anybody else has stored the same content
 * since: then it is no longer ours to remove.
 */
export const removeRawFile = async (folder: string, raw: StoredRaw): Promise<Outcome<void>> =>
  raw.alreadyThere ? done(undefined) : withFolderLock(folder, () => remove(folder, raw));
