import { spawnSync } from "node:child_process";
import { mkdirSync, utimesSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { thisPlace } from "../../src/folder/process-mark.ts";
import { sweepTemporary, temporaryPath } from "../../src/folder/temporary-file.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

const tail = "0123456789ab.part";
const twoHoursAgo = new Date(Date.now() - 2 * 60 * 60 * 1000);

describe("temporaryPath", () => {
  it("is hidden, in the folder, and another each time", () => {
    const paths = Array.from({ length: 100 }, () => temporaryPath("/somewhere"));
    expect(new Set(paths).size).toBe(100);
    expect(dirname(paths[0] ?? "")).toBe("/somewhere");
    expect(basename(paths[0] ?? "")).toMatch(/^\./);
  });
});

describe("sweepTemporary", () => {
  it("removes what the dead left and nothing else", async () => {
    const folder = temporaryFolder();
    const { pid: dead } = spawnSync(process.execPath, ["-e", "0"]);
    const keep = [
      basename(temporaryPath(folder)),
      `.holdband-${thisPlace}-1-${tail}`,
      // Of another machine, and young: its process may well be alive.
      `.holdband-ffffffffffff-${dead}-${tail}`,
      // Not our pattern, though close to it.
      `holdband-${thisPlace}-${dead}-${tail}`,
      `.holdband-${thisPlace}-${dead}-${tail}.csv`,
      `.other-${thisPlace}-${dead}-${tail}`,
      "night.part",
    ];
    for (const name of keep) write(folder, name, "x");
    write(folder, `.holdband-${thisPlace}-${dead}-${tail}`, "x");
    const old = write(folder, `.holdband-eeeeeeeeeeee-1-${tail}`, "x");
    utimesSync(old, twoHoursAgo, twoHoursAgo);
    await sweepTemporary(folder);
    expect(namesIn(folder)).toEqual(keep.toSorted());
  });

  it("never fails: no folder, or something that cannot be removed", async () => {
    const folder = temporaryFolder();
    await expect(sweepTemporary(join(folder, "none"))).resolves.toBeUndefined();
    const { pid: dead } = spawnSync(process.execPath, ["-e", "0"]);
    mkdirSync(join(folder, `.holdband-${thisPlace}-${dead}-${tail}`));
    await expect(sweepTemporary(folder)).resolves.toBeUndefined();
  });
});
