import { readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { createKitchen } from "../../src/folder/create-kitchen.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

const made = ["kitchen.yaml", "readings", "reports"];

describe("createKitchen", () => {
  it("makes the folder, with those above it", async () => {
    const folder = join(temporaryFolder(), "at", "home");
    valueOf(await createKitchen(folder, "room: 20\n"));
    expect(namesIn(folder)).toEqual(made);
    expect(readFileSync(join(folder, "kitchen.yaml"), "utf8")).toBe("room: 20\n");
  });

  it("leaves what is in the folder as it is", async () => {
    const folder = temporaryFolder();
    write(folder, "notes.txt", "mine");
    write(folder, "readings/night.csv", "38");
    valueOf(await createKitchen(folder, "room: 20\n"));
    expect(namesIn(folder)).toEqual([...made, "notes.txt"].toSorted());
    expect(namesIn(join(folder, "readings"))).toEqual(["night.csv"]);
  });

  it("never writes over a kitchen, not even a broken one", async () => {
    const folder = temporaryFolder();
    const file = write(folder, "kitchen.yaml", "mine");
    expect(codeOf(await createKitchen(folder, "new"))).toBe("kitchen-exists");
    expect(readFileSync(file, "utf8")).toBe("mine");
    expect(namesIn(folder)).toEqual(["kitchen.yaml"]);
    const linked = temporaryFolder();
    symlinkSync("nothing", join(linked, "kitchen.yaml"));
    expect(codeOf(await createKitchen(linked, "new"))).toBe("kitchen-exists");
  });

  it("is one kitchen where several start it at once", async () => {
    const folder = join(temporaryFolder(), "home");
    const all = await Promise.all(
      Array.from({ length: 10 }, (_, at) => createKitchen(folder, `from: ${at}\n`)),
    );
    expect(all.filter(({ ok }) => ok)).toHaveLength(1);
    expect(readFileSync(join(folder, "kitchen.yaml"), "utf8")).toBe(
      `from: ${all.findIndex(({ ok }) => ok)}\n`,
    );
    expect(namesIn(folder)).toEqual(made);
  });

  it("says what is in the way, and changes nothing", async () => {
    const folder = temporaryFolder();
    write(folder, "reports", "a file");
    expect(textOf(await createKitchen(folder, "x"))).toContain("a file called reports");
    const linked = temporaryFolder();
    symlinkSync(folder, join(linked, "readings"));
    expect(textOf(await createKitchen(linked, "x"))).toContain("a link called readings");
    const file = write(folder, "home", "x");
    expect(codeOf(await createKitchen(file, "x"))).toBe("kitchen-in-the-way");
    expect(codeOf(await createKitchen(join(file, "inner"), "x"))).toBe("file-unwritable");
    expect(namesIn(folder)).toEqual(["home", "reports"]);
    expect(namesIn(linked)).toEqual(["readings"]);
  });
});
