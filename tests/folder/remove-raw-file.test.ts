import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { storeRawFile, storeRawText } from "../../src/folder/raw-files.ts";
import { removeRawFile } from "../../src/folder/remove-raw-file.ts";
import { codeOf, valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

const kitchen = (): string => {
  const folder = temporaryFolder();
  write(folder, "kitchen.yaml", "room: 20\n");
  mkdirSync(join(folder, "readings"));
  return folder;
};

const readings = (folder: string): readonly string[] => namesIn(join(folder, "readings"));
const typed = async (folder: string) =>
  valueOf(await storeRawText(folder, "typed.csv", "22:30,41.2\n"));

describe("removeRawFile", () => {
  it("takes back a copy made just now", async () => {
    const folder = kitchen();
    write(folder, "readings/other.csv", "x");
    valueOf(await removeRawFile(folder, await typed(folder)));
    expect(readings(folder)).toEqual(["other.csv"]);
    expect(namesIn(folder)).toEqual(["kitchen.yaml", "readings"]);
  });

  it("leaves what was there before", async () => {
    const folder = kitchen();
    await typed(folder);
    valueOf(await removeRawFile(folder, await typed(folder)));
    expect(readings(folder)).toEqual(["typed.csv"]);
  });

  it("leaves what kitchen.yaml lists, and everything where that cannot be read", async () => {
    const folder = kitchen();
    const raw = await typed(folder);
    write(folder, "kitchen.yaml", `sha256: ${raw.sha256}\n`);
    valueOf(await removeRawFile(folder, raw));
    write(folder, "kitchen.yaml", Uint8Array.of(0xff));
    valueOf(await removeRawFile(folder, raw));
    expect(readings(folder)).toEqual(["typed.csv"]);
  });

  it("leaves what somebody else has stored since, as a copy or as it lies there", async () => {
    const folder = kitchen();
    const raw = await typed(folder);
    expect((await typed(folder)).alreadyThere).toBe(true);
    valueOf(await removeRawFile(folder, raw));
    expect(readings(folder)).toEqual(["typed.csv"]);
    const fresh = kitchen();
    const mine = await typed(fresh);
    valueOf(await storeRawFile(fresh, join(fresh, mine.path)));
    valueOf(await removeRawFile(fresh, mine));
    expect(readings(fresh)).toEqual(["typed.csv"]);
  });

  it("never leaves the folder", async () => {
    const folder = kitchen();
    const raw = await typed(folder);
    const outcome = await removeRawFile(folder, { ...raw, path: "../kitchen.yaml" });
    expect(codeOf(outcome)).toBe("path-leaves-folder");
  });
});
