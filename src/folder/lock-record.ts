/** What a lock file says: who holds the folder, where, since when. */
import { randomBytes } from "node:crypto";
import { open } from "node:fs/promises";
import { hostname } from "node:os";
import { thisProcess } from "./process-mark.ts";
import type { ProcessMark } from "./process-mark.ts";

export interface LockRecord extends ProcessMark {
  /** Never twice: the name by which this one hold of the lock is known. */
  readonly token: string;
  readonly host: string;
  /** ISO date and time. */
  readonly since: string;
}

export interface FoundLock {
  readonly path: string;
  readonly token: string;
  /** null: not a record of ours, or only begun. */
  readonly record: LockRecord | null;
  /** By the clock of the drive, ms since 1970. */
  readonly modified: number;
}

export const newRecord = (): LockRecord => ({
  token: randomBytes(8).toString("hex"),
  ...thisProcess(),
  host: hostname(),
  since: new Date().toISOString(),
});

export const recordText = (record: LockRecord): string => `${JSON.stringify(record)}\n`;

const isRecord = (value: unknown): value is LockRecord => {
  if (typeof value !== "object" || value === null) return false;
  const { token, pid, place, started, host, since } = value as Record<string, unknown>;
  return (
    typeof token === "string" &&
    /^[0-9a-f]{16}$/.test(token) &&
    Number.isSafeInteger(pid) &&
    Number(pid) > 0 &&
    typeof place === "string" &&
    typeof host === "string" &&
    /^\P{Cc}{1,255}$/u.test(host) &&
    typeof since === "string" &&
    /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/.test(since) &&
    (started === null || typeof started === "string")
  );
};

const recordIn = (text: string): LockRecord | null => {
  try {
    const value: unknown = JSON.parse(text);
    return isRecord(value) ? value : null;
  } catch {
    return null;
  }
};

const longest = 4096;

/** The lock file at `path`; null where there is none. Other failures are thrown. */
export const readLock = async (path: string): Promise<FoundLock | null> => {
  try {
    const handle = await open(path, "r");
    try {
      const { mtimeMs } = await handle.stat();
      const { buffer, bytesRead } = await handle.read(Buffer.alloc(longest), 0, longest, 0);
      const record = recordIn(buffer.toString("utf8", 0, bytesRead));
      return { path, token: record?.token ?? "unreadable", record, modified: mtimeMs };
    } finally {
      await handle.close();
    }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
};
