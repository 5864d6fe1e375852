import { appendFileSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fileHash } from "../../src/folder/file-hash.ts";
import { stageFile, stageText } from "../../src/folder/raw-stage.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

/** Long enough that something can happen while it is copied. */
const long = Buffer.alloc(48_000_000, "38.1\n");

describe("stageFile", () => {
  it("copies byte for byte and gives the hash of what was copied", async () => {
    const folder = temporaryFolder();
    const bytes = Buffer.from(Array.from({ length: 2_500_000 }, (_, at) => (at * 7919) % 256));
    const source = write(temporaryFolder(), "night.bin", bytes);
    const staged = valueOf(await stageFile(folder, source));
    expect(readFileSync(staged.part).equals(bytes)).toBe(true);
    expect(staged).toMatchObject({ bytes: 2_500_000, sha256: await fileHash(source) });
  });

  it.each([
    ["grows", (path: string) => appendFileSync(path, "38.2\n")],
    ["is written anew, as long as before", (path: string) => writeFileSync(path, long)],
    [
      "is replaced",
      (path: string) => {
        writeFileSync(`${path}~`, long);
        renameSync(`${path}~`, path);
      },
    ],
  ])("notices a source that %s while it is read", async (_, change) => {
    const folder = temporaryFolder();
    const source = write(temporaryFolder(), "night.csv", long);
    const outcome = stageFile(folder, source);
    while (namesIn(folder).length === 0) {
      // oxlint-disable-next-line no-await-in-loop -- until the copy has begun
      await new Promise((resolve) => setImmediate(resolve));
    }
    change(source);
    expect(codeOf(await outcome)).toBe("file-changed-meanwhile");
    expect(namesIn(folder)).toEqual([]);
  });

  it("says which side failed", async () => {
    const folder = temporaryFolder();
    const source = write(folder, "night.csv", "38");
    expect(codeOf(await stageFile(folder, join(folder, "none")))).toBe("file-unreadable");
    expect(codeOf(await stageFile(join(folder, "none"), source))).toBe("file-unwritable");
    // A folder can be opened, but not read as a file.
    expect(textOf(await stageFile(folder, folder))).toContain("could not be read (it is a folder)");
    expect(namesIn(folder)).toEqual(["night.csv"]);
  });
});

describe("stageText", () => {
  it("keeps a text as UTF-8", async () => {
    const folder = temporaryFolder();
    const staged = valueOf(await stageText(folder, "22:30;41,2 °C\n"));
    expect(readFileSync(staged.part, "utf8")).toBe("22:30;41,2 °C\n");
    expect(staged).toMatchObject({ bytes: 15, sha256: await fileHash(staged.part) });
    expect(codeOf(await stageText(join(folder, "none"), "x"))).toBe("file-unwritable");
  });
});
