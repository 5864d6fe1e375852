/** readings/: logger files exactly as they came. Stored once, never written over, never changed. */
import { mkdir, rm } from "node:fs/promises";
import { basename, join, relative, sep } from "node:path";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { readingsName } from "./create-kitchen.ts";
import { fileHash } from "./file-hash.ts";
import { withFolderLock } from "./folder-lock.ts";
import { insideFolder } from "./inside-folder.ts";
import { rawFileName } from "./raw-name.ts";
import { placeRaw } from "./raw-place.ts";
import { rawSource } from "./raw-source.ts";
import { stageFile, stageText } from "./raw-stage.ts";
import type { StagedRaw } from "./raw-stage.ts";
import { noteInterest, storedRaw } from "./stored-raw.ts";
import type { StoredRaw } from "./stored-raw.ts";
import { syncFolder } from "./sync-folder.ts";
import { systemReason } from "./system-reason.ts";
import { sweepTemporary } from "./temporary-file.ts";
import { isWithin } from "./within.ts";

const unwritable = (file: string, error: unknown) =>
  failed("file-unwritable", { file, why: systemReason(error) });

/** The real path of readings/, made where it is missing. */
const readingsFolder = async (folder: string): Promise<Outcome<string>> => {
  const inside = await insideFolder(folder, readingsName);
  if (!inside.ok) return inside;
  try {
    await mkdir(inside.value, { recursive: true });
    return inside;
  } catch (error) {
    return unwritable(inside.value, error);
  }
};

const place = async (
  readings: string,
  staged: StagedRaw,
  name: string,
): Promise<Outcome<StoredRaw>> => {
  try {
    const placed = await placeRaw(readings, staged, rawFileName(name));
    await syncFolder(readings);
    return done(await storedRaw(readings, placed.name, staged.sha256, placed.alreadyThere));
  } catch (error) {
    return unwritable(join(readings, name), error);
  }
};

/** Copying, which can take long, needs no lock; the name is given under it. */
const store = async (
  folder: string,
  name: string,
  stage: (readings: string) => Promise<Outcome<StagedRaw>>,
): Promise<Outcome<StoredRaw>> => {
  const readings = await readingsFolder(folder);
  if (!readings.ok) return readings;
  await sweepTemporary(readings.value);
  const staged = await stage(readings.value);
  if (!staged.ok) return staged;
  try {
    return await withFolderLock(folder, () => place(readings.value, staged.value, name));
  } finally {
    await rm(staged.value.part, { force: true }).catch(() => undefined);
  }
};

const alreadyInside = async (readings: string, file: string): Promise<Outcome<StoredRaw>> => {
  try {
    const name = relative(readings, file).replaceAll(sep, "/");
    await noteInterest(file);
    return done(await storedRaw(readings, name, await fileHash(file), true));
  } catch (error) {
    return failed("file-unreadable", { file, why: systemReason(error) });
  }
};

/**
 * Copies the file at `sourcePath` into readings/ of `folder`, untouched. Under
 * its own name made portable (raw-name.ts), numbered where another content has
 * it; a file that is in readings/ already, or whose content is, is not copied
 * again. Fails with "file-missing", "file-is-directory", "file-empty",
 * "file-unreadable", "file-changed-meanwhile", "file-unwritable",
 * "path-leaves-folder" (readings/ is a link to elsewhere), "kitchen-locked".
 */
export const storeRawFile = async (
  folder: string,
  sourcePath: string,
): Promise<Outcome<StoredRaw>> => {
  const source = await rawSource(sourcePath);
  if (!source.ok) return source;
  const readings = await insideFolder(folder, readingsName);
  if (readings.ok && isWithin(readings.value, source.value)) {
    return withFolderLock(folder, () => alreadyInside(readings.value, source.value));
  }
  return store(folder, basename(sourcePath), (to) => stageFile(to, sourcePath));
};

/** The same for readings that were typed: `text` is kept as UTF-8 under `name`. */
export const storeRawText = async (
  folder: string,
  name: string,
  text: string,
): Promise<Outcome<StoredRaw>> => store(folder, name, (to) => stageText(to, text));
