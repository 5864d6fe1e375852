import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { demoCommand, demoFiles } from "../../src/cli/demo-story.ts";
import { contractOf, holdband, listing, root, temporaryFolder, write } from "./run-holdband.ts";

describe("demo", () => {
  it("copies the nights, writes the report and says where it is", () => {
    const folder = temporaryFolder();
    const run = holdband(["demo"], { cwd: folder });
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    expect(run.out).toContain(join("holdband-demo", "report.html"));
    for (const name of demoFiles) {
      const copied = readFileSync(join(folder, "holdband-demo", name));
      expect(copied.equals(readFileSync(join(root, "fixtures", "kitchen", "readings", name)))).toBe(
        true,
      );
    }
    const report = join(folder, "holdband-demo", "report.html");
    expect(readFileSync(report, "utf8")).toMatch(/^<!doctype html>/i);
    expect(statSync(report).size).toBeLessThan(1_200_000);
  });

  it("tells its story: one holds, one is too warm, one is unproven", () => {
    const folder = temporaryFolder();
    const { probes } = contractOf(holdband(["demo", "story", "--json"], { cwd: folder }));
    const jars = probes.filter(({ role }) => role === "food");
    const low = jars.map(({ verdicts }) => verdicts.find(({ culture }) => culture === "reuteri"));
    const warm = jars.map(({ verdicts }) =>
      verdicts.find(({ culture }) => culture === "warm-blend"),
    );
    // In the order of the files: warm program near 41.2, adjustable near 38.0, box for one night only.
    expect(low.map((one) => one?.verdict)).toEqual(["misses", "holds", "unproven"]);
    expect(warm.slice(0, 2).map((one) => one?.verdict)).toEqual(["holds", "misses"]);
    expect(warm[2]?.verdict).not.toBe("holds");
  });

  it("can be run again, and its printed command gives the same answer", () => {
    const folder = temporaryFolder();
    const first = holdband(["demo", "d"], { cwd: folder });
    expect(holdband(["demo", "d"], { cwd: folder })).toEqual(first);
    const typed = demoCommand.flatMap((line) => line.split(" "));
    const byHand = holdband(["check", ...demoFiles, ...typed], { cwd: join(folder, "d") });
    expect(byHand.exitCode).toBe(0);
    expect(first.out).toContain(byHand.out.trimEnd().split("\n")[0]);
  });

  it("leaves a folder alone that holds other things", () => {
    const folder = temporaryFolder();
    write(folder, "notes.txt", "my notes");
    const before = listing(folder);
    const run = holdband(["demo", "."], { cwd: folder });
    expect(run).toMatchObject({ exitCode: 2, out: "" });
    expect(run.err).toContain("notes.txt");
    expect(listing(folder)).toEqual(before);
    expect(holdband(["demo", "notes.txt"], { cwd: folder }).err).toContain("it is a file");
    const changed = temporaryFolder();
    write(changed, demoFiles[0] ?? "", "my own readings");
    expect(holdband(["demo", changed]).exitCode).toBe(2);
    expect(readFileSync(join(changed, demoFiles[0] ?? ""), "utf8")).toBe("my own readings");
  });
});
