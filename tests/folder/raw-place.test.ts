import { mkdirSync, readFileSync, statSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { placeRaw } from "../../src/folder/raw-place.ts";
import { stageText } from "../../src/folder/raw-stage.ts";
import { valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

const placed = async (folder: string, name: string, text: string) =>
  placeRaw(folder, valueOf(await stageText(temporaryFolder(), text)), name);

describe("placeRaw", () => {
  it("gives a free name, then numbers", async () => {
    const folder = temporaryFolder();
    for (const [text, name] of [
      ["one", "night.csv"],
      ["two", "night-2.csv"],
      ["three", "night-3.csv"],
    ] as const) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other is the point
      expect(await placed(folder, "night.csv", text)).toEqual({ name, alreadyThere: false });
      expect(readFileSync(join(folder, name), "utf8")).toBe(text);
    }
  });

  it("knows content that is there, under whatever name, and leaves it untouched", async () => {
    const folder = temporaryFolder();
    const path = write(folder, "first.csv", "same");
    write(folder, "other.csv", "emas");
    const before = statSync(path);
    expect(await placed(folder, "second.csv", "same")).toEqual({
      name: "first.csv",
      alreadyThere: true,
    });
    expect(statSync(path)).toMatchObject({ mtimeMs: before.mtimeMs, mode: before.mode });
  });

  it("takes a name that differs in capitals or accents' make-up as taken", async () => {
    const folder = temporaryFolder();
    write(folder, "NIGHT.csv", "one");
    write(folder, "Ku\u0308che.csv", "one");
    expect((await placed(folder, "night.csv", "two")).name).toBe("night-2.csv");
    expect((await placed(folder, "küche.csv", "three")).name).toBe("küche-2.csv");
  });

  it("does not look into folders, links and what was left half-way", async () => {
    const folder = temporaryFolder();
    const outside = write(temporaryFolder(), "night.csv", "same");
    symlinkSync(outside, join(folder, "link.csv"));
    mkdirSync(join(folder, "night.csv"));
    write(folder, ".holdband-part", "same");
    expect(await placed(folder, "night.csv", "same")).toEqual({
      name: "night-2.csv",
      alreadyThere: false,
    });
    expect(namesIn(folder)).toHaveLength(4);
  });
});
