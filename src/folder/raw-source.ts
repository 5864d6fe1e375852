/** A file that somebody wants to keep: is it one, and where does it really lie? */
import { realpath, stat } from "node:fs/promises";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { isAbsent, systemReason } from "./system-reason.ts";

/** The source's real path, if it is a file that can be kept. */
export const rawSource = async (path: string): Promise<Outcome<string>> => {
  try {
    const found = await stat(path);
    if (found.isDirectory()) return failed("file-is-directory", { file: path });
    if (!found.isFile()) {
      return failed("file-unreadable", { file: path, why: "it is not an ordinary file" });
    }
    return found.size === 0 ? failed("file-empty", { file: path }) : done(await realpath(path));
  } catch (error) {
    return isAbsent(error)
      ? failed("file-missing", { file: path })
      : failed("file-unreadable", { file: path, why: systemReason(error) });
  }
};
