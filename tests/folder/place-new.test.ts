import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { placeByReserving, placeNew, writeNew } from "../../src/folder/place-new.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

describe.each([
  ["placeNew", placeNew],
  ["placeByReserving", placeByReserving],
])("%s", (_, place) => {
  it("moves a file to a free name", async () => {
    const folder = temporaryFolder();
    expect(await place(write(folder, "part", "new"), join(folder, "night.csv"))).toBe(true);
    expect(namesIn(folder)).toEqual(["night.csv"]);
    expect(readFileSync(join(folder, "night.csv"), "utf8")).toBe("new");
  });

  it("leaves both where the name is taken", async () => {
    const folder = temporaryFolder();
    const path = write(folder, "night.csv", "old");
    expect(await place(write(folder, "part", "new"), path)).toBe(false);
    expect(readFileSync(path, "utf8")).toBe("old");
    expect(existsSync(join(folder, "part"))).toBe(true);
    mkdirSync(join(folder, "inner"));
    expect(await place(join(folder, "part"), join(folder, "inner"))).toBe(false);
  });

  it("gives a name to one of many at once", async () => {
    const folder = temporaryFolder();
    const parts = Array.from({ length: 50 }, (__, at) => write(folder, `part${at}`, `${at}`));
    const results = await Promise.all(parts.map((part) => place(part, join(folder, "one"))));
    expect(results.filter(Boolean)).toHaveLength(1);
    expect(readFileSync(join(folder, "one"), "utf8")).toBe(`${results.indexOf(true)}`);
  });

  it("throws the system's error, and leaves no name behind", async () => {
    const folder = temporaryFolder();
    await expect(place(join(folder, "none"), join(folder, "one"))).rejects.toThrow("ENOENT");
    expect(namesIn(folder)).toEqual([]);
    const part = write(folder, "part", "x");
    await expect(place(part, join(folder, "no", "one"))).rejects.toThrow("ENOENT");
  });
});

describe("writeNew", () => {
  it("writes a file whole, and never over another", async () => {
    const folder = temporaryFolder();
    const path = join(folder, "night.csv");
    expect(await writeNew(path, "new")).toBe(true);
    expect(await writeNew(path, "newer")).toBe(false);
    expect(readFileSync(path, "utf8")).toBe("new");
    expect(namesIn(folder)).toEqual(["night.csv"]);
  });

  it("throws the system's error where there is no folder", async () => {
    const path = join(temporaryFolder(), "none", "night.csv");
    await expect(writeNew(path, "new")).rejects.toMatchObject({ code: "ENOENT" });
  });
});
