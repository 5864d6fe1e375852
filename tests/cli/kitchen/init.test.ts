import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contractOf, holdband, listing, temporaryFolder, write } from "../run-holdband.ts";
import { emptyKitchen } from "./run-kitchen.ts";

describe("init", () => {
  it("makes a folder with a file that is valid as it stands, and says what to do next", () => {
    const around = temporaryFolder();
    const run = holdband(["init", "my kitchen"], { cwd: around });
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    expect(run.out.match(/^\d\. /gm)).toHaveLength(4);
    expect(run.out).toContain("cd 'my kitchen'");
    for (const name of ["readings", "reports"]) {
      expect(existsSync(join(around, "my kitchen", name))).toBe(true);
    }
    expect(emptyKitchen().kitchen()).toMatchObject({ appliances: [], tests: [], cultures: [] });
  });

  it("tells steps that work as they are typed", () => {
    const around = temporaryFolder();
    const { out } = holdband(["init", "k"], { cwd: around });
    const typed = out
      .split("\n")
      .flatMap((line) => /^ +(holdband (?!add|enter).*)$/.exec(line)?.[1] ?? []);
    expect(typed.length).toBeGreaterThanOrEqual(5);
    for (const line of typed) {
      const words = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((one) => one[1] ?? one[2] ?? "");
      const run = holdband(words.slice(1), { cwd: join(around, "k") });
      expect(run, line).toMatchObject({ exitCode: 0, err: "" });
    }
  });

  it("needs no cd where one is there already", () => {
    const around = temporaryFolder();
    expect(holdband(["init", "."], { cwd: around }).out).not.toContain("cd ");
    expect(existsSync(join(around, "kitchen.yaml"))).toBe(true);
  });

  it("keeps what is in a folder, and leaves a kitchen that is there alone", () => {
    const around = temporaryFolder();
    write(around, "notes.txt", "mine");
    expect(holdband(["init", "."], { cwd: around }).exitCode).toBe(0);
    expect(readFileSync(join(around, "notes.txt"), "utf8")).toBe("mine");
    const before = listing(around);
    const again = holdband(["init", ".", "--json"], { cwd: around });
    expect(again.exitCode).toBe(2);
    expect(contractOf(again).problem?.code).toBe("kitchen-exists");
    expect(listing(around)).toEqual(before);
  });
});
