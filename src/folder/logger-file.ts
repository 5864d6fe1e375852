/** A logger's file on disk as a source of bytes, hashed while it is read. */
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { access, constants, stat } from "node:fs/promises";
import { basename } from "node:path";
import { done, failed } from "../problem.ts";
import type { Outcome, Problem } from "../problem.ts";
import type { ByteSource } from "../readings/readings-file.ts";
import { isAbsent, systemReason } from "./system-reason.ts";

const chunkBytes = 1024 * 1024;

export interface LoggerFile extends ByteSource {
  readonly bytes: number;
  /** SHA-256 of all bytes, in hex; to be asked once the chunks are consumed. */
  readonly sha256: () => string;
  /** Why reading broke off, if it did. */
  readonly broken: () => Problem | null;
}

const couldNotOpen = (file: string, error: unknown): Outcome<never> =>
  isAbsent(error)
    ? failed("file-missing", { file })
    : failed("file-unreadable", { file, why: systemReason(error) });

const streamed = (path: string, name: string, bytes: number, onBytes: (n: number) => void) => {
  const hash = createHash("sha256");
  let problem: Problem | null = null;
  const chunks = async function* (): AsyncGenerator<Uint8Array> {
    try {
      for await (const chunk of createReadStream(path, { highWaterMark: chunkBytes })) {
        const part = chunk as Buffer;
        hash.update(part);
        onBytes(part.length);
        yield part;
      }
    } catch (error) {
      problem = { code: "file-unreadable", facts: { file: name, why: systemReason(error) } };
      throw error;
    }
  };
  let digest: string | null = null;
  const sha256 = (): string => (digest ??= hash.digest("hex"));
  return { name, bytes, chunks: chunks(), sha256, broken: (): Problem | null => problem };
};

/**
 * Looks at a file without reading it. Fails with a coded problem where there
 * is none, or a folder, or an empty file, or one that may not be read.
 */
export const openLoggerFile = async (
  path: string,
  onBytes: (count: number) => void,
  name = basename(path),
): Promise<Outcome<LoggerFile>> => {
  try {
    const found = await stat(path);
    if (found.isDirectory()) return failed("file-is-directory", { file: path });
    if (found.isFile() && found.size === 0) return failed("file-empty", { file: path });
    await access(path, constants.R_OK);
    return done(streamed(path, name, found.size, onBytes));
  } catch (error) {
    return couldNotOpen(path, error);
  }
};
