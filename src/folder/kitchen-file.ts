/** kitchen.yaml on disk: reading it, and editing it without ever losing a version. */
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { withFolderLock } from "./folder-lock.ts";
import type { LockOptions } from "./folder-lock.ts";
import { kitchenPath, readKitchenBytes } from "./kitchen-bytes.ts";
import { writeAtomically } from "./write-atomically.ts";

/** The text of kitchen.yaml in `folder`; fails as readKitchenBytes does. */
export const readKitchenText = async (folder: string): Promise<Outcome<string>> => {
  const read = await readKitchenBytes(folder);
  return read.ok ? done(read.value.text) : read;
};

/** Editors know no lock of ours: somebody may have saved the file since it was read. */
const stillAs =
  (folder: string, bytes: Buffer): (() => Promise<Outcome<void>>) =>
  async () => {
    const now = await readKitchenBytes(folder);
    return now.ok && now.value.bytes.equals(bytes)
      ? done(undefined)
      : failed("kitchen-changed-meanwhile", { file: kitchenPath(folder) });
  };

const readEditWrite = async (
  folder: string,
  edit: (text: string) => Outcome<string>,
): Promise<Outcome<void>> => {
  const read = await readKitchenBytes(folder);
  if (!read.ok) return read;
  const { text, bytes } = read.value;
  const edited = edit(text);
  if (!edited.ok) return edited;
  if (edited.value === text) return done(undefined);
  return writeAtomically(kitchenPath(folder), edited.value, {
    keepPrevious: true,
    lastCheck: stillAs(folder, bytes),
  });
};

/**
 * Reads, edits and writes kitchen.yaml while no other holdband does, and keeps
 * the version before as kitchen.previous.yaml. A text that the edit left as it
 * was writes nothing. Fails as reading does, with the edit's own problem, or
 * with "kitchen-locked", "kitchen-changed-meanwhile", "file-unwritable",
 * "path-leaves-folder"; in each case the file is as it was.
 */
export const updateKitchen = async (
  folder: string,
  edit: (text: string) => Outcome<string>,
  options: LockOptions = {},
): Promise<Outcome<void>> => {
  // Before a lock file is put into what may be no kitchen at all.
  const there = await readKitchenBytes(folder);
  if (!there.ok) return there;
  return withFolderLock(folder, () => readEditWrite(folder, edit), options);
};
