/** SHA-256 of a file's bytes (FIPS 180-4), by which readings are known again. */
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

/** The browser hashes whole files only, so the largest must fit into memory beside everything else, bytes. */
export const largestFile = 500_000_000;

const unreadable = (file: string, why: string) => failed("file-unreadable", { file, why });

/** Where a file was changed, moved or taken out while the page was open, the browser refuses its bytes. */
const whyUnread = (error: unknown): string =>
  error instanceof Error && error.name === "NotFoundError"
    ? "it is no longer where it was chosen"
    : "it was changed since it was chosen, or the browser may not read it";

/** A file's bytes; fails with "file-unreadable" where the browser does not give them. */
export const bytesOf = async (
  content: Blob,
  name: string,
): Promise<Outcome<Uint8Array<ArrayBuffer>>> => {
  if (content.size > largestFile) {
    const megabytes = largestFile / 1e6;
    return unreadable(
      name,
      `it is over ${megabytes} MB, which a page cannot take; the command line can`,
    );
  }
  try {
    return done(new Uint8Array(await content.arrayBuffer()));
  } catch (error) {
    return unreadable(name, whyUnread(error));
  }
};

const hex = (bytes: ArrayBuffer): string =>
  Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, "0")).join("");

/** In hex; fails with "file-unreadable" where the browser has no SHA-256, or the bytes are not to be had. */
export const bytesHash = async (
  bytes: Uint8Array<ArrayBuffer>,
  name: string,
  subtle: Pick<SubtleCrypto, "digest"> | null = globalThis.crypto?.subtle ?? null,
): Promise<Outcome<string>> =>
  subtle === null
    ? unreadable(
        name,
        "this browser has no SHA-256 for pages opened this way, and readings are known by it",
      )
    : done(hex(await subtle.digest("SHA-256", bytes)));

const known = new WeakMap<Blob, string>();

/** The same of a file, which is hashed once however often it is asked for. */
export const fileHash = async (content: Blob, name: string): Promise<Outcome<string>> => {
  const before = known.get(content);
  if (before !== undefined) return done(before);
  const bytes = await bytesOf(content, name);
  if (!bytes.ok) return bytes;
  const hash = await bytesHash(bytes.value, name);
  if (hash.ok) known.set(content, hash.value);
  return hash;
};
