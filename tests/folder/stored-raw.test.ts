import { statSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { markOf, noteInterest, storedRaw } from "../../src/folder/stored-raw.ts";
import { temporaryFolder, write } from "./temporary-folder.ts";

describe("the mark of a raw file", () => {
  it("stays while nobody touches it, and changes with each who relies on it", async () => {
    const path = write(temporaryFolder(), "night.csv", "38");
    const before = statSync(path);
    const marks = [await markOf(path)];
    expect(await markOf(path)).toBe(marks[0]);
    for (let turn = 0; turn < 5; turn += 1) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other is the point
      await noteInterest(path);
      // oxlint-disable-next-line no-await-in-loop
      marks.push(await markOf(path));
    }
    expect(new Set(marks).size).toBe(6);
    expect(statSync(path)).toMatchObject({ mtimeMs: before.mtimeMs, mode: before.mode });
  });

  it("goes with the path as kitchen.yaml writes it", async () => {
    const path = write(temporaryFolder(), "readings/night.csv", "38");
    expect(await storedRaw(dirname(path), "night.csv", "ab", true)).toEqual({
      path: "readings/night.csv",
      sha256: "ab",
      alreadyThere: true,
      mark: await markOf(path),
    });
    await expect(markOf(join(path, "none"))).rejects.toThrow("ENOTDIR");
  });
});
