/** A folder of its own for one test, removed after it. */
import { mkdirSync, mkdtempSync, readdirSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";

export const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(realpathSync(tmpdir()), "holdband-folder-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

export const write = (folder: string, name: string, content: string | Uint8Array): string => {
  const path = join(folder, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content);
  return path;
};

/** Names of everything in a folder, sorted; hidden ones as well. */
export const namesIn = (folder: string): readonly string[] => readdirSync(folder).toSorted();
