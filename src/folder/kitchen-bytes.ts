/** kitchen.yaml as bytes and as text. */
import { open, stat } from "node:fs/promises";
import { join } from "node:path";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { isAbsent, systemReason } from "./system-reason.ts";

export const kitchenName = "kitchen.yaml";
export const kitchenPath = (folder: string): string => join(folder, kitchenName);

export interface KitchenBytes {
  readonly bytes: Buffer;
  readonly text: string;
}

const largest = 5_000_000;

const whyNot = async (folder: string, error: unknown): Promise<Outcome<never>> => {
  const file = kitchenPath(folder);
  if (!isAbsent(error)) return failed("kitchen-unreadable", { file, why: systemReason(error) });
  const found = await stat(folder).catch(() => null);
  if (found === null) return failed("folder-missing", { folder });
  if (found.isDirectory()) return failed("kitchen-missing", { folder });
  return failed("folder-is-file", { folder });
};

const readBytes = async (file: string): Promise<Outcome<Buffer>> => {
  // Looked at before it is opened: opening a pipe would wait for its other end.
  const found = await stat(file);
  if (!found.isFile()) {
    const why = found.isDirectory() ? "it is a folder" : "it is not an ordinary file";
    return failed("kitchen-unreadable", { file, why });
  }
  if (found.size > largest) {
    return failed("kitchen-too-large", { file, megabytes: Math.ceil(found.size / 1e6) });
  }
  const handle = await open(file, "r");
  return done(await handle.readFile().finally(() => handle.close()));
};

const textOf = (bytes: Buffer): string | null => {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
};

/**
 * Reads kitchen.yaml of `folder`; the text is without a byte order mark. Fails
 * with "folder-missing", "folder-is-file", "kitchen-missing", "kitchen-unreadable",
 * "kitchen-too-large" (over 5 MB) or "kitchen-not-utf8".
 */
export const readKitchenBytes = async (folder: string): Promise<Outcome<KitchenBytes>> => {
  try {
    const file = kitchenPath(folder);
    const read = await readBytes(file);
    if (!read.ok) return read;
    const text = textOf(read.value);
    return text === null ? failed("kitchen-not-utf8", { file }) : done({ bytes: read.value, text });
  } catch (error) {
    return whyNot(folder, error);
  }
};
