/** A folder of its own for one test, removed after it. */
import { mkdtempSync, realpathSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";

export const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(realpathSync(tmpdir()), "holdband-folder-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};
