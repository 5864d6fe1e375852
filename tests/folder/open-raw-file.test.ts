import { spawnSync } from "node:child_process";
import { rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openRawFile } from "../../src/folder/open-raw-file.ts";
import { problemText } from "../../src/problem.ts";
import type { TestFile } from "../../src/kitchen/kitchen.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { temporaryFolder, write } from "./temporary-folder.ts";

/** SHA-256 of "abc": NIST's example of one block (FIPS 180-4). */
const abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

const listed = (path: string, sha256 = abc): TestFile => ({
  path,
  sha256,
  startsAt: null,
  unit: null,
  dateOrder: null,
  decimal: null,
  intervalSeconds: null,
  columns: [],
  probes: [],
});

const ignore = (): void => undefined;
const night = listed("readings/night.csv");

const kitchen = (text: string): { readonly folder: string; readonly file: string } => {
  const folder = temporaryFolder();
  return { folder, file: write(folder, "readings/night.csv", text) };
};

const readAll = async (chunks: AsyncIterable<Uint8Array>): Promise<string> => {
  const parts: Uint8Array[] = [];
  for await (const chunk of chunks) parts.push(chunk);
  return Buffer.concat(parts).toString();
};

describe("openRawFile", () => {
  it("gives the bytes of a file that is still what was added", async () => {
    const { folder } = kitchen("abc");
    let counted = 0;
    const opened = valueOf(await openRawFile(folder, night, (count) => (counted += count)));
    expect(counted).toBe(0);
    expect(await readAll(opened.chunks)).toBe("abc");
    expect(opened).toMatchObject({ name: "readings/night.csv", bytes: 3 });
    expect([opened.sha256(), opened.broken(), counted]).toEqual([abc, null, 3]);
    // A hash written by hand may have capitals.
    const capitals = listed("readings/night.csv", abc.toUpperCase());
    expect(codeOf(await openRawFile(folder, capitals, ignore))).toBe("");
  });

  it("says that a file is missing, or changed and into what", async () => {
    const { folder, file } = kitchen("abd");
    const changed = textOf(await openRawFile(folder, night, ignore));
    expect(codeOf(await openRawFile(folder, night, ignore))).toBe("raw-file-changed");
    expect(changed).toContain("(SHA-256 ba7816bf8f01...)");
    // sha256sum of "abd".
    expect(changed).toContain("(a52d159f262b...)");
    writeFileSync(file, "");
    expect(codeOf(await openRawFile(folder, night, ignore))).toBe("raw-file-changed");
    rmSync(file);
    expect(codeOf(await openRawFile(folder, night, ignore))).toBe("raw-file-missing");
    rmSync(join(folder, "readings"), { recursive: true });
    expect(codeOf(await openRawFile(folder, night, ignore))).toBe("raw-file-missing");
    write(folder, "readings", "a file");
    expect(codeOf(await openRawFile(folder, night, ignore))).toBe("raw-file-missing");
  });

  it("breaks off where the file changes after it was checked", async () => {
    const { folder, file } = kitchen("abc");
    const opened = valueOf(await openRawFile(folder, night, ignore));
    writeFileSync(file, "abd");
    await expect(readAll(opened.chunks)).rejects.toThrow("changed while it was read");
    const problem = opened.broken();
    expect(problem?.code).toBe("raw-file-changed");
    expect(problem === null ? "" : problemText(problem)).toContain("Restore it from a copy");
  });

  it("says why reading broke off otherwise", async () => {
    const { folder, file } = kitchen("abc");
    const opened = valueOf(await openRawFile(folder, night, ignore));
    rmSync(file);
    await expect(readAll(opened.chunks)).rejects.toThrow("ENOENT");
    expect(opened.broken()?.code).toBe("file-unreadable");
  });

  it("reads nothing outside the folder, and waits for no pipe", async () => {
    const { folder } = kitchen("abc");
    const outside = write(temporaryFolder(), "night.csv", "abc");
    symlinkSync(outside, join(folder, "readings", "link.csv"));
    for (const path of ["../night.csv", outside, "readings/link.csv"]) {
      // oxlint-disable-next-line no-await-in-loop -- a few, one by one
      expect(codeOf(await openRawFile(folder, listed(path), ignore))).toBe("path-leaves-folder");
    }
    spawnSync("mkfifo", [join(folder, "readings", "pipe")]);
    expect(textOf(await openRawFile(folder, listed("readings/pipe"), ignore))).toContain(
      "not an ordinary file",
    );
    expect(textOf(await openRawFile(folder, listed("readings"), ignore))).toContain(
      "could not be read",
    );
  });
});
