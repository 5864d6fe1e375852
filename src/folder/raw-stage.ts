/** Raw readings copied to a temporary file, hashed on the way and flushed. */
import { createHash } from "node:crypto";
import { open, rm, stat } from "node:fs/promises";
import type { FileHandle } from "node:fs/promises";
import type { BigIntStats } from "node:fs";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { systemReason } from "./system-reason.ts";
import { temporaryPath, writeFlushed } from "./temporary-file.ts";

export interface StagedRaw {
  /** The temporary file; whoever staged it removes it or gives it a name. */
  readonly part: string;
  readonly sha256: string;
  readonly bytes: number;
}

const chunkBytes = 1024 * 1024;

class SourceError extends Error {}

/** Tells a failure of the source from one of the copy. */
const readChunk = async (source: FileHandle, buffer: Buffer): Promise<number> => {
  try {
    return (await source.read(buffer, 0, chunkBytes, null)).bytesRead;
  } catch (error) {
    throw new SourceError("source", { cause: error });
  }
};

const writeAll = async (target: FileHandle, chunk: Uint8Array): Promise<void> => {
  let from = 0;
  while (from < chunk.length) {
    // oxlint-disable-next-line no-await-in-loop -- in their order
    from += (await target.write(chunk, from)).bytesWritten;
  }
};

const copyHashed = async (
  source: FileHandle,
  target: FileHandle,
): Promise<{ readonly sha256: string; readonly bytes: number }> => {
  const hash = createHash("sha256");
  const buffer = Buffer.allocUnsafe(chunkBytes);
  let bytes = 0;
  /* oxlint-disable no-await-in-loop -- a file is read from its beginning to its end */
  for (;;) {
    const length = await readChunk(source, buffer);
    if (length === 0) break;
    const chunk = buffer.subarray(0, length);
    hash.update(chunk);
    await writeAll(target, chunk);
    bytes += length;
  }
  /* oxlint-enable no-await-in-loop */
  await target.sync();
  return { sha256: hash.digest("hex"), bytes };
};

/** The path as well as the open file: a program may write anew and rename. */
const isUnchanged = async (path: string, before: BigIntStats, bytes: number): Promise<boolean> => {
  const after = await stat(path, { bigint: true }).catch(() => null);
  return (
    after !== null &&
    after.ino === before.ino &&
    after.size === before.size &&
    after.mtimeNs === before.mtimeNs &&
    BigInt(bytes) === before.size
  );
};

const stage = async (
  source: FileHandle,
  path: string,
  part: string,
): Promise<Outcome<StagedRaw>> => {
  const before = await source.stat({ bigint: true });
  const target = await open(part, "wx");
  const copied = await copyHashed(source, target).finally(() => target.close());
  return (await isUnchanged(path, before, copied.bytes))
    ? done({ part, ...copied })
    : failed("file-changed-meanwhile", { file: path });
};

const stageFailure = (path: string, folder: string, error: unknown) =>
  error instanceof SourceError
    ? failed("file-unreadable", { file: path, why: systemReason(error.cause) })
    : failed("file-unwritable", { file: folder, why: systemReason(error) });

/**
 * Copies the file at `path` into a temporary file in `folder`. A source whose
 * size or time changes meanwhile is refused ("file-changed-meanwhile"): half of
 * a night would be kept as if it were all of it. Also fails with
 * "file-unreadable" and "file-unwritable"; then nothing is left behind.
 */
export const stageFile = async (folder: string, path: string): Promise<Outcome<StagedRaw>> => {
  const part = temporaryPath(folder);
  let source: FileHandle;
  try {
    source = await open(path, "r");
  } catch (error) {
    return failed("file-unreadable", { file: path, why: systemReason(error) });
  }
  const staged = await stage(source, path, part)
    .catch((error: unknown) => stageFailure(path, folder, error))
    .finally(() => source.close());
  if (!staged.ok) await rm(part, { force: true }).catch(() => undefined);
  return staged;
};

/** The same for a text, kept as UTF-8. */
export const stageText = async (folder: string, text: string): Promise<Outcome<StagedRaw>> => {
  const part = temporaryPath(folder);
  const content = Buffer.from(text);
  try {
    await writeFlushed(part, content);
    const sha256 = createHash("sha256").update(content).digest("hex");
    return done({ part, sha256, bytes: content.length });
  } catch (error) {
    await rm(part, { force: true }).catch(() => undefined);
    return failed("file-unwritable", { file: folder, why: systemReason(error) });
  }
};
