/**
 * A raw file as kitchen.yaml lists it, read only if it is still what was added.
 *
 * The hash is made first, in a pass of its own, because a changed file must be
 * called changed and not give whatever the reader stumbles over in it. It is
 * made once more while the bytes are read, so that a file changed between the
 * two passes is never believed either. The second pass comes from the system's
 * memory; the first costs about as much as reading the file.
 */
import { stat } from "node:fs/promises";
import { done, failed } from "../problem.ts";
import type { Outcome, Problem } from "../problem.ts";
import type { TestFile } from "../kitchen/kitchen.ts";
import { fileHash } from "./file-hash.ts";
import { insideFolder } from "./inside-folder.ts";
import { openLoggerFile } from "./logger-file.ts";
import type { LoggerFile } from "./logger-file.ts";
import { isAbsent, systemReason } from "./system-reason.ts";

const shownDigits = 12;

const changed = (file: string, expected: string, found: string) =>
  failed("raw-file-changed", {
    file,
    expected: expected.slice(0, shownDigits),
    found: found.slice(0, shownDigits),
  });

const verify = async (path: string, { path: file, sha256 }: TestFile): Promise<Outcome<void>> => {
  try {
    // A pipe in its place would be waited for without end.
    if (!(await stat(path)).isFile()) {
      return failed("file-unreadable", { file, why: "it is not an ordinary file" });
    }
    const found = await fileHash(path);
    return found === sha256.toLowerCase() ? done(undefined) : changed(file, sha256, found);
  } catch (error) {
    return isAbsent(error)
      ? failed("raw-file-missing", { file })
      : failed("file-unreadable", { file, why: systemReason(error) });
  }
};

/** The same file, which breaks off at its end if what was read is not what was verified. */
const verifiedTwice = (inner: LoggerFile, { path, sha256 }: TestFile): LoggerFile => {
  let problem: Problem | null = null;
  const chunks = async function* (): AsyncGenerator<Uint8Array> {
    yield* inner.chunks;
    if (inner.sha256() === sha256.toLowerCase()) return;
    problem = changed(path, sha256, inner.sha256()).problem;
    throw new Error("changed while it was read");
  };
  return { ...inner, chunks: chunks(), broken: () => problem ?? inner.broken() };
};

/**
 * Opens a raw file of `folder` after checking its SHA-256 against kitchen.yaml.
 * Fails with "raw-file-missing", "raw-file-changed", "path-leaves-folder" or
 * "file-unreadable". Reading it can still break off (`broken` says why).
 */
export const openRawFile = async (
  folder: string,
  file: TestFile,
  onBytes: (count: number) => void,
): Promise<Outcome<LoggerFile>> => {
  const path = await insideFolder(folder, file.path);
  if (!path.ok) return path;
  const verified = await verify(path.value, file);
  if (!verified.ok) return verified;
  const opened = await openLoggerFile(path.value, onBytes, file.path);
  return opened.ok ? done(verifiedTwice(opened.value, file)) : opened;
};
