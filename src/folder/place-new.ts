/** Giving a finished file its name without ever writing over another. */
import { link, open, rename, rm } from "node:fs/promises";
import { dirname } from "node:path";
import { temporaryPath, writeFlushed } from "./temporary-file.ts";

const codeOf = (error: unknown): string => (error as NodeJS.ErrnoException).code ?? "";

/**
 * For drives without hard links: the name is reserved by an empty file that
 * only one process can create, then the finished file is renamed over it. A
 * kill in between leaves that empty file, never half of one.
 */
export const placeByReserving = async (part: string, path: string): Promise<boolean> => {
  try {
    await (await open(path, "wx")).close();
  } catch (error) {
    if (codeOf(error) === "EEXIST") return false;
    throw error;
  }
  try {
    await rename(part, path);
    return true;
  } catch (error) {
    await rm(path, { force: true });
    throw error;
  }
};

/**
 * Moves `part` to `path` in the same folder; false where that name is taken,
 * and then `part` stays. Several at once: exactly one gets the name. Throws
 * the system's error where the folder takes no file.
 */
export const placeNew = async (part: string, path: string): Promise<boolean> => {
  try {
    await link(part, path);
  } catch (error) {
    return codeOf(error) === "EEXIST" ? false : placeByReserving(part, path);
  }
  await rm(part, { force: true });
  return true;
};

/**
 * A new file with `content`, whole or not at all; false where the name is
 * taken. Throws the system's error, and then leaves nothing behind.
 */
export const writeNew = async (path: string, content: string): Promise<boolean> => {
  const part = temporaryPath(dirname(path));
  try {
    await writeFlushed(part, content);
    return await placeNew(part, path);
  } finally {
    await rm(part, { force: true }).catch(() => undefined);
  }
};
