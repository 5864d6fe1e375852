import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { isFreeName, writeNewFile } from "../../../src/cli/enter/write-new-file.ts";
import { temporaryFolder, write } from "../run-holdband.ts";

describe("writeNewFile", () => {
  it("writes a new file and leaves nothing else", async () => {
    const folder = temporaryFolder();
    const file = join(folder, "night.csv");
    expect((await isFreeName(file)).ok).toBe(true);
    expect((await writeNewFile(file, "a\n")).ok).toBe(true);
    expect(readFileSync(file, "utf8")).toBe("a\n");
    expect(readdirSync(folder)).toEqual(["night.csv"]);
  });

  it("never writes over a file or a folder", async () => {
    const folder = temporaryFolder();
    const file = write(folder, "night.csv", "mine");
    expect((await isFreeName(file)).ok).toBe(false);
    expect(await writeNewFile(file, "a\n")).toMatchObject({
      ok: false,
      problem: { code: "file-unwritable" },
    });
    expect((await isFreeName(folder)).ok).toBe(false);
    expect(readFileSync(file, "utf8")).toBe("mine");
    expect(readdirSync(folder)).toEqual(["night.csv"]);
  });

  it("says so where there is no such folder", async () => {
    const file = join(temporaryFolder(), "nowhere", "night.csv");
    expect(await isFreeName(file)).toMatchObject({
      problem: { facts: { why: "the folder does not exist" } },
    });
    expect((await writeNewFile(file, "a")).ok).toBe(false);
  });

  it("gives a name to one of several that want it at once", async () => {
    const file = join(temporaryFolder(), "night.csv");
    const tries = await Promise.all(["a", "b", "c", "d"].map((text) => writeNewFile(file, text)));
    expect(tries.filter(({ ok }) => ok)).toHaveLength(1);
  });
});
