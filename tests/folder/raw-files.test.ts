import { mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fileHash } from "../../src/folder/file-hash.ts";
import { storeRawFile, storeRawText } from "../../src/folder/raw-files.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

/* oxlint-disable no-await-in-loop -- one step after the other is the point */

const kitchen = (): string => {
  const folder = temporaryFolder();
  write(folder, "kitchen.yaml", "room: 20\n");
  mkdirSync(join(folder, "readings"));
  return folder;
};

const readings = (folder: string): readonly string[] => namesIn(join(folder, "readings"));

describe("storeRawFile", () => {
  it("copies a logger's file untouched under its name", async () => {
    const folder = kitchen();
    const bytes = Uint8Array.from([0xff, 0xfe, 0x33, 0x00, 0x0d, 0x0a, 0x00]);
    const source = write(temporaryFolder(), "Küche 🥛 22:30.csv", bytes);
    const raw = valueOf(await storeRawFile(folder, source));
    expect(raw).toMatchObject({
      path: "readings/Küche 🥛 22-30.csv",
      sha256: await fileHash(source),
      alreadyThere: false,
    });
    expect([...readFileSync(join(folder, raw.path))]).toEqual([...bytes]);
    expect([...readFileSync(source)]).toEqual([...bytes]);
    expect(namesIn(folder)).toEqual(["kitchen.yaml", "readings"]);
    expect(readings(folder)).toHaveLength(1);
  });

  it("knows the same file again, by its content", async () => {
    const folder = kitchen();
    const source = write(temporaryFolder(), "night.csv", "38");
    const first = valueOf(await storeRawFile(folder, source));
    const again = valueOf(await storeRawFile(folder, source));
    const renamed = write(temporaryFolder(), "copy.csv", "38");
    const other = valueOf(await storeRawFile(folder, renamed));
    for (const raw of [again, other]) {
      expect(raw).toMatchObject({ path: first.path, sha256: first.sha256, alreadyThere: true });
    }
    expect(readings(folder)).toEqual(["night.csv"]);
  });

  it("keeps another content of the same name beside it", async () => {
    const folder = kitchen();
    const store = async (text: string) =>
      valueOf(await storeRawFile(folder, write(temporaryFolder(), "night.csv", text)));
    expect((await store("38")).path).toBe("readings/night.csv");
    expect((await store("39")).path).toBe("readings/night-2.csv");
    expect(readFileSync(join(folder, "readings", "night.csv"), "utf8")).toBe("38");
  });

  it("keeps one copy of one content, and all of several, when all come at once", async () => {
    const folder = kitchen();
    const same = write(temporaryFolder(), "night.csv", "same");
    const others = ["a", "b", "c"].map((text) => write(temporaryFolder(), "night.csv", text));
    const sources = [same, ...others, same, same, same];
    const all = await Promise.all(sources.map((source) => storeRawFile(folder, source)));
    expect(all.filter((one) => !valueOf(one).alreadyThere)).toHaveLength(4);
    expect(new Set(all.map((one) => valueOf(one).path)).size).toBe(4);
    expect(readings(folder)).toHaveLength(4);
  });

  it("does not copy what is in readings/ already, wherever there, nor by a link to it", async () => {
    const folder = kitchen();
    const inside = write(folder, "readings/2026/night.csv", "38");
    const link = join(temporaryFolder(), "link.csv");
    symlinkSync(inside, link);
    for (const source of [inside, link]) {
      expect(valueOf(await storeRawFile(folder, source))).toMatchObject({
        path: "readings/2026/night.csv",
        sha256: await fileHash(inside),
        alreadyThere: true,
      });
    }
    expect(readings(folder)).toEqual(["2026"]);
    // Elsewhere in the folder is not in readings/.
    const beside = write(folder, "night.csv", "39");
    expect(valueOf(await storeRawFile(folder, beside)).path).toBe("readings/night.csv");
  });

  it("makes readings/ anew where it is gone, and refuses it as a link to elsewhere", async () => {
    const folder = temporaryFolder();
    const source = write(temporaryFolder(), "night.csv", "38");
    expect(valueOf(await storeRawFile(folder, source)).alreadyThere).toBe(false);
    const linked = temporaryFolder();
    const outside = temporaryFolder();
    symlinkSync(outside, join(linked, "readings"));
    expect(codeOf(await storeRawFile(linked, source))).toBe("path-leaves-folder");
    expect(namesIn(outside)).toEqual([]);
  });

  it("says what stands in the way", async () => {
    const folder = kitchen();
    expect(codeOf(await storeRawFile(folder, join(folder, "none")))).toBe("file-missing");
    expect(codeOf(await storeRawFile(folder, folder))).toBe("file-is-directory");
    expect(codeOf(await storeRawFile(folder, write(folder, "empty.csv", "")))).toBe("file-empty");
    const source = write(temporaryFolder(), "night.csv", "38");
    expect(codeOf(await storeRawFile(join(folder, "none"), source))).toBe("folder-missing");
    const blocked = temporaryFolder();
    write(blocked, "readings", "a file");
    expect(textOf(await storeRawFile(blocked, source))).toContain("something else of that name");
  });
});

describe("storeRawText", () => {
  it("keeps typed readings like a logger's file", async () => {
    const folder = kitchen();
    const raw = valueOf(await storeRawText(folder, "typed/22:30.csv", "22:30,41.2\n"));
    expect(raw).toMatchObject({ path: "readings/typed-22-30.csv", alreadyThere: false });
    expect(await fileHash(join(folder, raw.path))).toBe(raw.sha256);
    const again = valueOf(await storeRawText(folder, "later.csv", "22:30,41.2\n"));
    expect(again).toMatchObject({ path: raw.path, alreadyThere: true });
  });
});
