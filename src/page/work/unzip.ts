/** Files out of a zip that somebody was given: whole, and only as many and as large as a kitchen can have. */
import { inflateSync } from "fflate";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ChosenFile } from "../protocol.ts";
import { crc32 } from "./crc32.ts";
import { bytesOf, largestFile } from "./file-hash.ts";
import { isWanted } from "./opened-files.ts";
import { zipEntries } from "./zip-directory.ts";
import type { ZipEntry } from "./zip-directory.ts";

const mostFiles = 2000;

const damaged = "it is no zip file, or it is damaged";

/** Deflate makes of nothing more than this; what says otherwise lies about its size. */
const largestPacked = (originalSize: number): number => originalSize * 1.01 + 1000;

/** Why a zip is not unpacked, by what it says of its files; null: it is. */
const whyNot = (entries: readonly ZipEntry[]): string | null => {
  if (entries.some(({ locked }) => locked)) return "it is locked with a password";
  if (entries.length > mostFiles) return `it holds over ${mostFiles} files`;
  if (entries.some(({ size, originalSize }) => size > largestPacked(originalSize))) return damaged;
  const total = entries.reduce((sum, { originalSize }) => sum + originalSize, 0);
  if (total <= largestFile) return null;
  return `it unpacks to over ${largestFile / 1e6} MB, which a page cannot take`;
};

/** null where it is not what the zip says. Never takes more room than that. */
const unpacked = (entry: ZipEntry): Uint8Array<ArrayBuffer> | null => {
  const { method, packed, originalSize, crc } = entry;
  if (method !== 0 && method !== 8) return null;
  // One byte over: a file that holds more than it says shows in that.
  const out = new Uint8Array(originalSize + 1);
  const bytes = method === 0 ? packed : inflateSync(packed, { out });
  if (bytes.length !== originalSize || crc32(bytes) !== crc) return null;
  return new Uint8Array(bytes);
};

const contents = (entries: readonly ZipEntry[]): readonly ChosenFile[] | null => {
  const files: ChosenFile[] = [];
  for (const entry of entries) {
    const bytes = unpacked(entry);
    if (bytes === null) return null;
    files.push({ name: entry.name, content: new Blob([bytes]) });
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
  const refused = (why: string) => failed("file-unreadable", { file: name, why });
  const bytes = await bytesOf(content, name);
  if (!bytes.ok) return bytes;
  const entries = zipEntries(bytes.value)?.filter((entry) => isWanted(entry.name)) ?? null;
  if (entries === null) return refused(damaged);
  const why = whyNot(entries);
  if (why !== null) return refused(why);
  try {
    const files = contents(entries);
    return files === null ? refused(damaged) : done(files);
  } catch {
    // The bytes are no deflated ones.
    return refused(damaged);
  }
};
