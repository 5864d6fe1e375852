import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, statfsSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { updateKitchen } from "../../src/folder/kitchen-file.ts";
import { storeRawFile } from "../../src/folder/raw-files.ts";
import { done } from "../../src/problem.ts";
import { codeOf, textOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

/** A disk of 256 kB of our own in memory; only root of a machine that allows it can have one. */
const disk = mkdtempSync(join(tmpdir(), "holdband-disk-"));
const mount = (...line: readonly string[]): boolean =>
  process.platform === "linux" && spawnSync("mount", [...line, disk]).status === 0;
const mounted = mount("-t", "tmpfs", "-o", "size=256k", "holdband-test");

afterAll(() => {
  if (mounted) spawnSync("umount", [disk]);
  rmSync(disk, { recursive: true, force: true });
});

const old = "room: 20\n";
const file = join(disk, "kitchen.yaml");

describe.skipIf(!mounted)("a disk that takes no more", () => {
  it("full: nothing is written, and nothing is lost or left behind", async () => {
    writeFileSync(file, old);
    const large = "#".repeat(200_000);
    const night = write(temporaryFolder(), "night.csv", Buffer.alloc(400_000, "38.1\n"));
    expect(textOf(await storeRawFile(disk, night))).toContain("the disk is full");
    writeFileSync(join(disk, "other"), "x".repeat(100_000));
    const outcome = await updateKitchen(disk, (text) => done(text + large));
    expect(textOf(outcome)).toContain("the disk is full");
    expect(readFileSync(file, "utf8")).toBe(old);
    expect(namesIn(disk)).toEqual(["kitchen.yaml", "other", "readings"]);
    expect(namesIn(join(disk, "readings"))).toEqual([]);
  });

  it("full to the last byte: even the lock is refused with the reason", async () => {
    writeFileSync(join(disk, "other"), "");
    const { bavail, bsize } = statfsSync(disk);
    writeFileSync(join(disk, "other"), "x".repeat(bavail * bsize));
    const outcome = await updateKitchen(disk, (text) => done(`${text}a: 1\n`));
    expect(textOf(outcome)).toContain("the disk is full");
    expect(readFileSync(file, "utf8")).toBe(old);
    expect(namesIn(disk)).toEqual(["kitchen.yaml", "other", "readings"]);
  });

  it("read-only: says so", async () => {
    expect(mount("-o", "remount,ro")).toBe(true);
    const outcome = await updateKitchen(disk, (text) => done(`${text}a: 1\n`));
    expect(codeOf(outcome)).toBe("file-unwritable");
    expect(textOf(outcome)).toContain("the disk is read-only");
    expect(readFileSync(file, "utf8")).toBe(old);
  });
});
