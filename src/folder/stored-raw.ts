/** Where a raw file was stored, and by what it is known again. */
import { chmod, lstat } from "node:fs/promises";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { readingsName } from "./create-kitchen.ts";

export interface StoredRaw {
  /** From the kitchen folder, with forward slashes: "readings/night.csv". */
  readonly path: string;
  readonly sha256: string;
  /** The same content was in readings/ before, perhaps under another name. */
  readonly alreadyThere: boolean;
  /** The file as it was left; changes when anybody else stores the same content. */
  readonly mark: string;
}

/** What the system knows a file and its last change by. */
export const markOf = async (path: string): Promise<string> => {
  const { ino, ctimeNs } = await lstat(path, { bigint: true });
  return `${ino}-${ctimeNs}`;
};

/** A clock that is read in coarse steps moves on within so many tries. */
const tries = 20;

/**
 * A sign for others, under the folder's lock, that somebody else relies on this
 * file now: setting the permissions it has changes its mark and nothing else.
 */
export const noteInterest = async (path: string): Promise<void> => {
  const before = await markOf(path);
  const { mode } = await lstat(path);
  /* oxlint-disable no-await-in-loop -- until the clock has moved */
  for (let turn = 0; turn < tries && (await markOf(path)) === before; turn += 1) {
    if (turn > 0) await sleep(2);
    await chmod(path, mode % 0o10000).catch(() => undefined);
  }
  /* oxlint-enable no-await-in-loop */
};

export const storedRaw = async (
  readings: string,
  name: string,
  sha256: string,
  alreadyThere: boolean,
): Promise<StoredRaw> => ({
  path: `${readingsName}/${name}`,
  sha256,
  alreadyThere,
  mark: await markOf(join(readings, name)),
});
