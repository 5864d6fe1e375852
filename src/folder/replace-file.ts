/** Replacing a file whole: whatever happens, the old one or the new one is there. */
import { access, constants, copyFile, link, open, rename, rm, stat } from "node:fs/promises";
import type { FileHandle } from "node:fs/promises";
import type { Stats } from "node:fs";
import { dirname } from "node:path";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { syncFolder } from "./sync-folder.ts";
import { systemReason } from "./system-reason.ts";
import { sweepTemporary, temporaryPath } from "./temporary-file.ts";

export interface ReplaceOptions {
  /** Where to keep the version that is there now; it is put there whole as well. */
  readonly previous?: string;
  /** Asked directly before the change is made; a problem stops it and nothing is changed. */
  readonly lastCheck?: () => Promise<Outcome<void>>;
}

const isAbsent = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === "ENOENT";

const statOrNull = async (path: string): Promise<Stats | null> => {
  try {
    return await stat(path);
  } catch (error) {
    if (isAbsent(error)) return null;
    throw error;
  }
};

/** The owner first, since changing it can drop permissions; only root may, others keep going. */
const likeOld = async (handle: FileHandle, old: Stats): Promise<void> => {
  const now = await handle.stat();
  if (now.uid !== old.uid || now.gid !== old.gid) {
    await handle.chown(old.uid, old.gid).catch(() => undefined);
  }
  await handle.chmod(old.mode % 0o10000);
};

const writePart = async (
  part: string,
  content: string | Uint8Array,
  old: Stats | null,
): Promise<void> => {
  const handle = await open(part, "wx", old === null ? 0o666 : 0o600);
  try {
    await handle.writeFile(content);
    if (old !== null) await likeOld(handle, old);
    await handle.sync();
  } finally {
    await handle.close();
  }
};

/**
 * A second name for the version that is there: by a hard link, so that even what
 * an editor saves into it up to the last moment is kept; by a copy where the
 * drive knows no links.
 */
const secondName = async (path: string, part: string): Promise<void> => {
  try {
    await link(path, part);
  } catch {
    await copyFile(path, part, constants.COPYFILE_EXCL);
    const handle = await open(part, "r+");
    await handle.sync().finally(() => handle.close());
  }
};

interface Parts {
  readonly next: string;
  readonly previous: string;
}

const replace = async (
  path: string,
  content: string | Uint8Array,
  { previous, lastCheck }: ReplaceOptions,
  parts: Parts,
): Promise<Outcome<void>> => {
  const old = await statOrNull(path);
  // A rename would replace even a file that its owner has made read-only.
  if (old !== null) await access(path, constants.W_OK);
  await writePart(parts.next, content, old);
  const keep = previous !== undefined && old !== null;
  if (keep) await secondName(path, parts.previous);
  const checked = lastCheck === undefined ? done(undefined) : await lastCheck();
  if (!checked.ok) return checked;
  if (keep) await rename(parts.previous, previous);
  await rename(parts.next, path);
  await syncFolder(dirname(path));
  return done(undefined);
};

/**
 * Writes a temporary file beside `path`, flushes it, and renames it over
 * `path`: a kill at any instant leaves the old or the new file whole. Keeps
 * permissions and, where allowed, the owner. Fails with "file-unwritable".
 */
export const replaceFile = async (
  path: string,
  content: string | Uint8Array,
  options: ReplaceOptions = {},
): Promise<Outcome<void>> => {
  const folder = dirname(path);
  await sweepTemporary(folder);
  const parts = { next: temporaryPath(folder), previous: temporaryPath(folder) };
  try {
    return await replace(path, content, options, parts);
  } catch (error) {
    return failed("file-unwritable", { file: path, why: systemReason(error) });
  } finally {
    // Of two names for one file, rename does nothing and leaves both (rename(2)).
    await rm(parts.previous, { force: true }).catch(() => undefined);
    await rm(parts.next, { force: true }).catch(() => undefined);
  }
};
