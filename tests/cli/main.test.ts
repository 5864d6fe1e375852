import { spawnSync } from "node:child_process";
import { closeSync, existsSync, openSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { program } from "./run-holdband.ts";

/** A device of Linux that takes nothing, as a full disk does (its manual page full(4)). */
const full = "/dev/full";

describe("the program's output", () => {
  it.skipIf(!existsSync(full))("says that the answer could not be written", () => {
    const out = openSync(full, "w");
    const run = spawnSync(process.execPath, [program, "culture"], {
      stdio: ["ignore", out, "pipe"],
      encoding: "utf8",
    });
    closeSync(out);
    expect(run.status).toBe(2);
    expect(run.stderr).toMatch(/^The answer could not be written \(the disk is full\)\..*\n$/);
  });
});
