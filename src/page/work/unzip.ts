/** Files out of a zip that somebody was given: only as many, and as large, as a kitchen can have. */
import { unzipSync } from "fflate";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ChosenFile } from "../protocol.ts";
import { bytesOf, largestFile } from "./file-hash.ts";
import { isWanted } from "./opened-files.ts";

const mostFiles = 2000;
/** Of entries looked at, wanted or not: a forged count must not keep the page busy. */
const mostEntries = 20_000;

/** Deflate lets nothing grow by more; an entry that says so lies about its size. */
const couldShrinkTo = (size: number): number => size * 1.01 + 1000;

class Refused extends Error {}

interface Limits {
  entries: number;
  files: number;
  bytes: number;
}

interface Entry {
  readonly name: string;
  readonly size: number;
  readonly originalSize: number;
}

/** Throws where the zip as a whole is not to be unpacked. */
const admit = (limits: Limits, { name, size, originalSize }: Entry): boolean => {
  limits.entries += 1;
  if (limits.entries > mostEntries) throw new Refused("it holds too many files for a kitchen");
  if (!isWanted(name)) return false;
  limits.files += 1;
  limits.bytes += originalSize;
  if (limits.files > mostFiles) throw new Refused(`it holds over ${mostFiles} files`);
  if (limits.bytes > largestFile) {
    throw new Refused(`it unpacks to over ${largestFile / 1e6} MB, which a page cannot take`);
  }
  if (size > couldShrinkTo(originalSize)) throw new Refused("it is damaged");
  return true;
};

const unpacked = (bytes: Uint8Array): Readonly<Record<string, Uint8Array>> => {
  const limits: Limits = { entries: 0, files: 0, bytes: 0 };
  const sizes = new Map<string, number>();
  const files = unzipSync(bytes, {
    filter: (entry) => {
      sizes.set(entry.name, entry.originalSize);
      return admit(limits, entry);
    },
  });
  for (const [name, { length }] of Object.entries(files)) {
    if (sizes.get(name) !== length) throw new Refused("it is damaged");
  }
  return files;
};

/**
 * The files of a zip with their paths in it; folders, hidden files and paths
 * that leave the folder are passed over. Fails with "file-unreadable" where it
 * is no zip, is damaged, or unpacks to more than a page can take.
 */
export const unzipped = async ({
  name,
  content,
}: ChosenFile): Promise<Outcome<readonly ChosenFile[]>> => {
  const bytes = await bytesOf(content, name);
  if (!bytes.ok) return bytes;
  try {
    const files = Object.entries(unpacked(bytes.value));
    return done(
      files.map(([path, part]) => ({
        name: path,
        content: new Blob([part as Uint8Array<ArrayBuffer>]),
      })),
    );
  } catch (error) {
    const why = error instanceof Refused ? error.message : "it is no zip file, or it is damaged";
    return failed("file-unreadable", { file: name, why });
  }
};
