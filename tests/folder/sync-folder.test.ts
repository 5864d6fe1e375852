import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { syncFolder } from "../../src/folder/sync-folder.ts";
import { temporaryFolder } from "./temporary-folder.ts";

// That a flush reaches the disk cannot be seen without cutting the power.
describe("syncFolder", () => {
  it("does no harm, nor where there is no folder", async () => {
    const folder = temporaryFolder();
    await expect(syncFolder(folder)).resolves.toBeUndefined();
    await expect(syncFolder(join(folder, "none"))).resolves.toBeUndefined();
  });
});
