import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { assert, oneof, property, string, constantFrom, array } from "fast-check";
import { describe, expect, it } from "vitest";
import { numberedName, rawFileName, splitName } from "../../src/folder/raw-name.ts";
import { namesIn, temporaryFolder } from "./temporary-folder.ts";

describe("rawFileName", () => {
  it.each([
    "night.csv",
    "Nacht über Küche 3.csv",
    "夜の水.tsv",
    "milk 🥛👩‍🍳.txt",
    "a.b-c_d (2).CSV",
  ])("keeps %s", (name) => expect(rawFileName(name)).toBe(name));

  it.each([
    ["../../etc/passwd", "-..-etc-passwd"],
    ["C:\\logs\\night.csv", "C--logs-night.csv"],
    ["22:30 <jar>|bath?.csv", "22-30 -jar--bath-.csv"],
    ["a\nb\u0000c\u0085d.csv", "a-b-c-d.csv"],
    [".hidden.csv", "hidden.csv"],
    [" .. .csv", "csv"],
    ["night.csv. ", "night.csv"],
    ["...", "readings"],
    ["", "readings"],
    // A mark that turns the writing round would show this as "nightexe.csv".
    ["night\u202evsc.exe", "nightvsc.exe"],
    ["half \ud83e.csv", "half -.csv"],
    // Decomposed, as some systems give names.
    ["Ku\u0308che.csv", "Küche.csv"],
  ])("makes of %j %j", (name, expected) => expect(rawFileName(name)).toBe(expected));

  // Reserved by Windows, with any ending and in any case: its rules for naming files.
  it.each(["CON", "prn.csv", "Aux.tar.gz", "NUL", "com1.csv", "LPT9", "COM¹.txt"])(
    "does not keep the device name %s",
    (name) => expect(rawFileName(name)).toBe(`file-${name}`),
  );

  it("keeps names that only begin like a device", () => {
    expect(rawFileName("console.csv")).toBe("console.csv");
    expect(rawFileName("com10.csv")).toBe("com10.csv");
  });

  it("shortens to 180 bytes between whole letters and emoji, and keeps the ending", () => {
    const long = rawFileName(`${"👩‍🍳".repeat(100)}.csv`);
    expect(long).toBe(`${"👩‍🍳".repeat(16)}.csv`);
    expect(Buffer.byteLength(long)).toBeLessThanOrEqual(180);
    expect(rawFileName("n".repeat(300))).toHaveLength(180);
  });

  it("makes of anything a name that a disk takes, and that stays as it is", () => {
    const folder = temporaryFolder();
    const odd = constantFrom("/", "\\", ".", " ", "\0", "CON", "👩‍🍳", "\u202e", "ü", "\ud83e");
    const anything = array(oneof(odd, string({ unit: "binary" })), { maxLength: 40 });
    assert(
      property(anything, (parts) => {
        const name = rawFileName(parts.join(""));
        writeFileSync(join(folder, name), "");
        expect(namesIn(folder)).toContain(name);
        expect(name).not.toMatch(/[\p{Cc}\p{Cs}/\\:*?"<>|]|^\.|[. ]$/u);
        expect(Buffer.byteLength(name)).toBeLessThanOrEqual(180 + "file-".length);
        expect(rawFileName(name)).toBe(name);
      }),
      { numRuns: 300 },
    );
  });
});

describe("numberedName", () => {
  it("puts the number before the ending", () => {
    expect(numberedName("night.csv", 1)).toBe("night.csv");
    expect(numberedName("night.csv", 2)).toBe("night-2.csv");
    expect(numberedName("night", 3)).toBe("night-3");
    expect(splitName("what a night. and then nothing more")).toMatchObject({ ending: "" });
  });
});
