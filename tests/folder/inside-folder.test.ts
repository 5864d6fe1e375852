import { mkdirSync, rmSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { assert, asyncProperty, constantFrom, array } from "fast-check";
import { describe, expect, it } from "vitest";
import { insideFolder } from "../../src/folder/inside-folder.ts";
import { isWithin } from "../../src/folder/within.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { temporaryFolder, write } from "./temporary-folder.ts";

describe("insideFolder", () => {
  it("gives the absolute path, of what is there and what is not yet", async () => {
    const folder = temporaryFolder();
    write(folder, "readings/night.csv", "x");
    for (const path of [
      "readings/night.csv",
      "./readings/night.csv",
      "readings/später/neu 🥛.csv",
    ]) {
      // oxlint-disable-next-line no-await-in-loop -- a few, one by one
      expect(valueOf(await insideFolder(folder, path))).toBe(join(folder, path));
    }
    expect(valueOf(await insideFolder(folder, "..night.csv"))).toBe(join(folder, "..night.csv"));
  });

  it.each([
    ["", "it is empty"],
    ["..", "goes up"],
    ["../night.csv", "goes up"],
    ["readings/../../night.csv", "goes up"],
    ["readings/..", "goes up"],
    ["/etc/passwd", "does not start from the folder"],
    ["//server/share", "does not start from the folder"],
    ["C:night.csv", "drive"],
    ["c:/night.csv", "drive"],
    ["readings\\night.csv", "backslash"],
    ["\\\\server\\share", "backslash"],
    ["readings/night.csv\0.png", "NUL"],
    [".", "out of the folder"],
  ])("refuses %j: %s", async (path, why) => {
    const outcome = await insideFolder(temporaryFolder(), path);
    expect(codeOf(outcome)).toBe("path-leaves-folder");
    expect(textOf(outcome)).toContain(why);
    expect(textOf(outcome)).not.toMatch(/\p{Cc}/u);
  });

  it("refuses links that lead out, at the end, on the way, and one after the other", async () => {
    const folder = temporaryFolder();
    const outside = temporaryFolder();
    const secret = write(outside, "secret.csv", "x");
    mkdirSync(join(folder, "inner"));
    symlinkSync(secret, join(folder, "night.csv"));
    symlinkSync(outside, join(folder, "readings"));
    symlinkSync(join("..", "readings"), join(folder, "inner", "on"));
    symlinkSync(join(outside, "none"), join(folder, "dangling"));
    const paths = ["night.csv", "readings/secret.csv", "readings/new.csv", "inner/on/secret.csv"];
    for (const path of [...paths, "readings", "dangling", "dangling/new.csv"]) {
      // oxlint-disable-next-line no-await-in-loop -- a few, one by one
      expect([path, codeOf(await insideFolder(folder, path))]).toEqual([
        path,
        "path-leaves-folder",
      ]);
    }
  });

  it("follows links that stay inside, and a folder that is itself behind a link", async () => {
    const folder = temporaryFolder();
    const file = write(folder, "readings/night.csv", "x");
    symlinkSync("readings", join(folder, "nights"));
    expect(valueOf(await insideFolder(folder, "nights/night.csv"))).toBe(file);
    const alias = join(temporaryFolder(), "kitchen");
    symlinkSync(folder, alias);
    expect(valueOf(await insideFolder(alias, "readings/night.csv"))).toBe(file);
  });

  it("says where there is no folder, and what the system will not follow", async () => {
    const folder = temporaryFolder();
    expect(codeOf(await insideFolder(join(folder, "none"), "a.csv"))).toBe("folder-missing");
    symlinkSync("loop", join(folder, "loop"));
    expect(textOf(await insideFolder(folder, "loop/a.csv"))).toContain("in a circle");
  });

  it("never gives a path outside, whatever the parts", async () => {
    const folder = temporaryFolder();
    const outside = temporaryFolder();
    symlinkSync(outside, join(folder, "out"));
    symlinkSync(folder, join(folder, "self"));
    const part = constantFrom("..", ".", "", "out", "self", "a", "a\\..", "C:", "...", "~", " ..");
    await assert(
      asyncProperty(array(part, { maxLength: 6 }), async (parts) => {
        const outcome = await insideFolder(folder, parts.join("/"));
        if (outcome.ok) expect(isWithin(folder, outcome.value)).toBe(true);
        const at = parts.findIndex((one) => !["self", ".", ""].includes(one));
        if (parts[at] === "out" || parts.includes("..")) expect(outcome.ok).toBe(false);
      }),
    );
    rmSync(join(folder, "self"));
  });
});
