import { mkdirSync, symlinkSync } from "node:fs";
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readKitchenBytes } from "../../src/folder/kitchen-bytes.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { temporaryFolder, write } from "./temporary-folder.ts";

const withKitchen = (content: string | Uint8Array): string => {
  const folder = temporaryFolder();
  write(folder, "kitchen.yaml", content);
  return folder;
};

describe("readKitchenBytes", () => {
  it("gives bytes and text; a byte order mark is in the bytes only", async () => {
    const read = valueOf(await readKitchenBytes(withKitchen("\ufeffname: Küche 🥛\r\n")));
    expect(read.text).toBe("name: Küche 🥛\r\n");
    expect([...read.bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
  });

  it("says how to start where there is no kitchen", async () => {
    const folder = temporaryFolder();
    const missing = join(folder, "none");
    expect(codeOf(await readKitchenBytes(missing))).toBe("folder-missing");
    expect(textOf(await readKitchenBytes(missing))).toContain(`holdband init ${missing}`);
    expect(codeOf(await readKitchenBytes(folder))).toBe("kitchen-missing");
    expect(textOf(await readKitchenBytes(folder))).toContain(`holdband init ${folder}`);
    const file = write(folder, "night.csv", "x");
    expect(textOf(await readKitchenBytes(file))).toContain("found a file");
  });

  it("refuses what is not an ordinary file, without waiting for it", async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "kitchen.yaml"));
    expect(textOf(await readKitchenBytes(folder))).toContain("it is a folder");
    const loop = temporaryFolder();
    symlinkSync("kitchen.yaml", join(loop, "kitchen.yaml"));
    expect(textOf(await readKitchenBytes(loop))).toContain("the links go in a circle");
    const piped = temporaryFolder();
    spawnSync("mkfifo", [join(piped, "kitchen.yaml")]);
    expect(textOf(await readKitchenBytes(piped))).toContain("not an ordinary file");
  });

  it("refuses more than 5 MB", async () => {
    expect(codeOf(await readKitchenBytes(withKitchen("#".repeat(5_000_000))))).toBe("");
    const text = textOf(await readKitchenBytes(withKitchen("#".repeat(5_000_001))));
    expect(text).toContain("found 6 MB");
  });

  // Byte sequences that RFC 3629 (UTF-8) does not allow, or another encoding.
  it.each([
    ["Latin-1", [0x6b, 0xfc, 0x63, 0x68, 0x65]],
    ["UTF-16 with its mark", [0xff, 0xfe, 0x61, 0x00]],
    ["an overlong slash", [0xc0, 0xaf]],
    ["half a pair of surrogates", [0xed, 0xa0, 0x80]],
    ["a letter cut off", [0x61, 0xe2, 0x82]],
  ])("refuses %s", async (_, bytes) => {
    expect(codeOf(await readKitchenBytes(withKitchen(Uint8Array.from(bytes))))).toBe(
      "kitchen-not-utf8",
    );
  });
});
