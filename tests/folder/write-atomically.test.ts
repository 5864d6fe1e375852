import { lstatSync, mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { previousPath, writeAtomically } from "../../src/folder/write-atomically.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

const read = (path: string): string => readFileSync(path, "utf8");

describe("writeAtomically", () => {
  it("names the version before like the file", () => {
    expect(previousPath("/k/kitchen.yaml")).toBe("/k/kitchen.previous.yaml");
    expect(previousPath("/k/notes")).toBe("/k/notes.previous");
  });

  it("keeps the version before only when asked", async () => {
    const folder = temporaryFolder();
    const path = write(folder, "kitchen.yaml", "1");
    valueOf(await writeAtomically(path, "2"));
    expect(namesIn(folder)).toEqual(["kitchen.yaml"]);
    valueOf(await writeAtomically(path, "3", { keepPrevious: true }));
    expect(read(join(folder, "kitchen.previous.yaml"))).toBe("2");
  });

  it("writes through a link to a file of the same folder", async () => {
    const folder = temporaryFolder();
    write(folder, "all/home.yaml", "1");
    const path = join(folder, "kitchen.yaml");
    symlinkSync(join("all", "home.yaml"), path);
    valueOf(await writeAtomically(path, "2", { keepPrevious: true }));
    expect(lstatSync(path).isSymbolicLink()).toBe(true);
    expect(read(join(folder, "all", "home.yaml"))).toBe("2");
    expect(read(join(folder, "all", "home.previous.yaml"))).toBe("1");
  });

  it("does not follow a link that leads elsewhere, or nowhere", async () => {
    const folder = temporaryFolder();
    const outside = write(temporaryFolder(), "kitchen.yaml", "theirs");
    const path = join(folder, "kitchen.yaml");
    symlinkSync(outside, path);
    expect(codeOf(await writeAtomically(path, "x"))).toBe("path-leaves-folder");
    expect(read(outside)).toBe("theirs");
    symlinkSync("nothing.yaml", join(folder, "dangling.yaml"));
    expect(textOf(await writeAtomically(join(folder, "dangling.yaml"), "x"))).toContain(
      "a link to nothing",
    );
    expect(namesIn(folder)).toEqual(["dangling.yaml", "kitchen.yaml"]);
  });

  it("writes only to ordinary files", async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "inner"));
    expect(textOf(await writeAtomically(join(folder, "inner"), "x"))).toContain("it is a folder");
    expect(textOf(await writeAtomically("/dev/null", "x"))).toContain("not an ordinary file");
  });
});
