/** Writing a file of the kitchen folder: whole or not at all, and never outside it. */
import { lstat, realpath } from "node:fs/promises";
import { basename, dirname, extname, join, resolve } from "node:path";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { replaceFile } from "./replace-file.ts";
import type { ReplaceOptions } from "./replace-file.ts";
import { systemReason } from "./system-reason.ts";
import { isWithin } from "./within.ts";

export interface WriteOptions extends Pick<ReplaceOptions, "lastCheck"> {
  /** Keep the version before beside it: kitchen.yaml -> kitchen.previous.yaml. */
  readonly keepPrevious?: boolean;
}

export const previousPath = (path: string): string => {
  const ending = extname(path);
  return join(dirname(path), `${basename(path, ending)}.previous${ending}`);
};

/** A link is followed, so that it stays one, but only to a file in its own folder. */
const targetOf = async (path: string): Promise<Outcome<string>> => {
  const found = await lstat(path).catch(() => null);
  if (found === null || found.isFile()) return done(path);
  if (!found.isSymbolicLink()) {
    const why = found.isDirectory() ? "it is a folder" : "it is not an ordinary file";
    return failed("file-unwritable", { file: path, why });
  }
  const target = await realpath(path).catch(() => null);
  if (target === null) {
    return failed("file-unwritable", { file: path, why: "it is a link to nothing" });
  }
  if (!isWithin(await realpath(dirname(path)), target)) {
    return failed("path-leaves-folder", { path, why: `it is a link to ${target}` });
  }
  return done(target);
};

/**
 * Puts `content` at `path`: the file is the old or the new one at every
 * instant, whatever dies. Where `path` is a symbolic link, its target is
 * written if that lies in the same folder. Fails with "file-unwritable",
 * "path-leaves-folder", or the problem `lastCheck` gave.
 */
export const writeAtomically = async (
  path: string,
  content: string | Uint8Array,
  { keepPrevious = false, lastCheck }: WriteOptions = {},
): Promise<Outcome<void>> => {
  try {
    const target = await targetOf(resolve(path));
    if (!target.ok) return target;
    return await replaceFile(target.value, content, {
      ...(keepPrevious ? { previous: previousPath(target.value) } : {}),
      ...(lastCheck === undefined ? {} : { lastCheck }),
    });
  } catch (error) {
    return failed("file-unwritable", { file: path, why: systemReason(error) });
  }
};
