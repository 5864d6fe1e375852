/** Where a raw file was stored, and by what it is known again. */
import { lstat } from "node:fs/promises";
import { join } from "node:path";
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
