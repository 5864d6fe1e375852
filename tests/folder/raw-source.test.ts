import { spawnSync } from "node:child_process";
import { symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { rawSource } from "../../src/folder/raw-source.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { temporaryFolder, write } from "./temporary-folder.ts";

describe("rawSource", () => {
  it("gives where the file really lies", async () => {
    const folder = temporaryFolder();
    const file = write(folder, "night.csv", "38");
    symlinkSync(file, join(folder, "link.csv"));
    expect(valueOf(await rawSource(join(folder, "link.csv")))).toBe(file);
  });

  it("says what is no file to keep", async () => {
    const folder = temporaryFolder();
    expect(codeOf(await rawSource(join(folder, "none")))).toBe("file-missing");
    expect(codeOf(await rawSource(folder))).toBe("file-is-directory");
    const empty = write(folder, "empty.csv", "");
    expect(codeOf(await rawSource(empty))).toBe("file-empty");
    expect(codeOf(await rawSource(join(empty, "x.csv")))).toBe("file-missing");
    spawnSync("mkfifo", [join(folder, "pipe")]);
    expect(textOf(await rawSource(join(folder, "pipe")))).toContain("not an ordinary file");
    expect(codeOf(await rawSource(join(folder, "n".repeat(300))))).toBe("file-unreadable");
  });
});
