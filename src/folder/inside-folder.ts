/** A path written in kitchen.yaml to a path on disk that surely lies in the kitchen folder. */
import { lstat, realpath } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { isAbsent, systemReason } from "./system-reason.ts";
import { isWithin } from "./within.ts";

/** What is wrong with the path as it is written; null: nothing. Alike on every system. */
const wrongAsWritten = (path: string): string | null => {
  if (path === "") return "it is empty";
  if (path.includes("\0")) return "it has a NUL character in it";
  if (path.includes("\\")) return "it has a backslash in it";
  if (path.startsWith("/")) return "it does not start from the folder";
  if (/^[A-Za-z]:/.test(path)) return "it names a drive";
  if (path.split("/").includes("..")) return "it goes up by ..";
  return null;
};

/** The path with every link followed; of what is not there yet, its name below the real folder. */
const realOrPlanned = async (path: string): Promise<string | null> => {
  try {
    return await realpath(path);
  } catch (error) {
    if (!isAbsent(error)) throw error;
  }
  // There, and yet not: a link to nothing; where it would lead, nobody can say.
  if ((await lstat(path).catch(() => null)) !== null) return null;
  const above = await realOrPlanned(dirname(path));
  return above === null ? null : join(above, basename(path));
};

const leaves = (path: string, why: string) =>
  failed("path-leaves-folder", { path: path.replaceAll(/\p{Cc}/gu, "?"), why });

const followed = async (folder: string, path: string): Promise<Outcome<string>> => {
  const home = await realpath(folder);
  const real = await realOrPlanned(join(home, path));
  if (real === null) return leaves(path, "a link in it leads to nothing");
  if (!isWithin(home, real)) return leaves(path, "a link in it leads out of the folder");
  return done(real);
};

/**
 * The absolute path, links followed, of a relative path with forward slashes;
 * what it names need not be there. Fails with "path-leaves-folder" where the
 * path as written, or any link in it, leaves `folder`, and with
 * "folder-missing"; with "file-unreadable" where the system does not let it be followed.
 */
export const insideFolder = async (folder: string, path: string): Promise<Outcome<string>> => {
  const wrong = wrongAsWritten(path);
  if (wrong !== null) return leaves(path, wrong);
  try {
    return await followed(folder, path);
  } catch (error) {
    if ((await lstat(folder).catch(() => null)) === null)
      return failed("folder-missing", { folder });
    return failed("file-unreadable", { file: path, why: systemReason(error) });
  }
};
