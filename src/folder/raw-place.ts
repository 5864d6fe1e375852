/** Giving staged readings a name in readings/, unless the same content is there already. */
import { lstat, readdir } from "node:fs/promises";
import { join } from "node:path";
import { fileHash } from "./file-hash.ts";
import { placeNew } from "./place-new.ts";
import { numberedName } from "./raw-name.ts";
import type { StagedRaw } from "./raw-stage.ts";
import { noteInterest } from "./stored-raw.ts";

export interface PlacedRaw {
  readonly name: string;
  readonly alreadyThere: boolean;
}

/** What some systems take for one name: capitals and the composition of accents do not count. */
const foldedName = (name: string): string => name.normalize("NFC").toLowerCase();

const hasContent = async (path: string, staged: StagedRaw): Promise<boolean> => {
  const found = await lstat(path).catch(() => null);
  if (found === null || !found.isFile() || found.size !== staged.bytes) return false;
  return (await fileHash(path).catch(() => "")) === staged.sha256;
};

const sameContent = async (
  folder: string,
  names: readonly string[],
  staged: StagedRaw,
): Promise<string | null> => {
  for (const name of names) {
    // oxlint-disable-next-line no-await-in-loop -- the first found ends the search
    if (!name.startsWith(".") && (await hasContent(join(folder, name), staged))) return name;
  }
  return null;
};

/**
 * To be called under the folder's lock. `name` is clean. Where another content
 * has that name it becomes name-2, name-3, ...; nothing is written over. The
 * temporary file is used up, or left for the caller to remove.
 */
export const placeRaw = async (
  folder: string,
  staged: StagedRaw,
  name: string,
): Promise<PlacedRaw> => {
  const names = await readdir(folder);
  const same = await sameContent(folder, names, staged);
  if (same !== null) {
    await noteInterest(join(folder, same));
    return { name: same, alreadyThere: true };
  }
  const taken = new Set(names.map(foldedName));
  for (let number = 1; ; number += 1) {
    const next = numberedName(name, number);
    if (taken.has(foldedName(next))) continue;
    // oxlint-disable-next-line no-await-in-loop -- one name after the other
    if (await placeNew(staged.part, join(folder, next))) return { name: next, alreadyThere: false };
  }
};
