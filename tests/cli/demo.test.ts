import { readFileSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { holdband, listing, root, temporaryFolder, write } from "./run-holdband.ts";

const example = join(root, "fixtures", "kitchen");
const night = join("readings", "adjustable-cooker.csv");

interface KitchenJson {
  readonly setUps: readonly {
    readonly appliance: string;
    readonly tests: readonly string[];
    readonly verdicts: readonly { readonly culture: string; readonly verdict: string }[];
  }[];
  readonly tests: readonly { readonly problem: unknown }[];
}

interface RecheckJson {
  readonly recheck: {
    readonly rechecks: readonly {
      readonly appliance: string;
      readonly word: string;
      readonly level: { readonly difference: number };
    }[];
    readonly due: readonly unknown[];
    readonly findings: readonly {
      readonly now: { readonly verdict: string } | null;
      readonly causes: readonly { readonly code: string }[];
    }[];
  };
}

describe("demo", () => {
  it("copies the kitchen, writes its report and says where it is", () => {
    const folder = temporaryFolder();
    const run = holdband(["demo"], { cwd: folder });
    expect(run).toMatchObject({ exitCode: 0, err: "" });
    const made = join(folder, "holdband-demo");
    expect(run.out).toContain(join("holdband-demo", "reports", "kitchen.html"));
    for (const name of ["kitchen.yaml", night]) {
      expect(readFileSync(join(made, name)).equals(readFileSync(join(example, name)))).toBe(true);
    }
    const report = join(made, "reports", "kitchen.html");
    expect(readFileSync(report, "utf8")).toMatch(/^<!doctype html>/i);
    expect(statSync(report).size).toBeLessThan(1_200_000);
  });

  it("tells its story: each long-hold culture has its appliance, and no test is unread", () => {
    const folder = temporaryFolder();
    const { out } = holdband(["demo", "story", "--json"], { cwd: folder });
    const { setUps, tests } = JSON.parse(out) as KitchenJson;
    expect(tests).toHaveLength(8);
    expect(tests.filter(({ problem }) => problem !== null)).toEqual([]);
    const word = (appliance: string, culture: string, nights: number) =>
      setUps
        .find((one) => one.appliance === appliance && one.tests.length === nights)
        ?.verdicts.find((one) => one.culture === culture)?.verdict;
    // Warm program near 41.2, adjustable cooker near 38.0 on three nights, the bath near 40.8.
    expect(word("warm-cooker", "reuteri", 1)).toBe("misses");
    expect(word("warm-cooker", "warm-blend", 1)).toBe("holds");
    expect(word("step-cooker", "reuteri", 3)).toBe("holds");
    expect(word("step-cooker", "warm-blend", 3)).toBe("misses");
    expect(word("bath", "warm-blend", 1)).toBe("holds");
    // Water in the basin at 41: the cooker ended the heat by itself.
    expect(word("step-cooker", "warm-blend", 1)).toBe("unproven");
  });

  it("shows a cooker that is still what it was, and what else makes its batches separate", () => {
    const folder = temporaryFolder();
    holdband(["demo", "story"], { cwd: folder });
    const { out } = holdband(["recheck", "--kitchen", "story", "--json"], { cwd: folder });
    const { recheck } = JSON.parse(out) as RecheckJson;
    const cooker = recheck.rechecks.find((one) => one.appliance === "step-cooker");
    expect(cooker).toMatchObject({ word: "not moved", thermometer: "shared" });
    // The same appliance was simulated both times: any difference is the program's or the noise's.
    expect(Math.abs(cooker!.level.difference)).toBeLessThan(0.1);
    expect(recheck.due).toEqual([]);
    expect(recheck.findings).toHaveLength(1);
    const [batches] = recheck.findings;
    expect(batches).toMatchObject({ culture: "reuteri", batches: 3, separated: 2 });
    expect(batches!.now?.verdict).toBe("holds");
    expect(batches!.causes.map(({ code }) => code)).toEqual(["held-too-long", "thin-milk"]);
  });

  it("can be run again, and what it suggests to type works", { timeout: 60_000 }, () => {
    const folder = temporaryFolder();
    const first = holdband(["demo", "d"], { cwd: folder });
    expect(holdband(["demo", "d"], { cwd: folder })).toEqual(first);
    const suggested = first.out
      .split("\n")
      .filter((line) => line.startsWith("  holdband "))
      .map((line) => line.trim().split(" ").slice(1));
    expect(suggested.length).toBeGreaterThan(2);
    for (const line of suggested) {
      expect(holdband(line, { cwd: join(folder, "d") })).toMatchObject({ exitCode: 0, err: "" });
    }
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
  });

  it("does not write over a demo kitchen somebody has changed", () => {
    const folder = temporaryFolder();
    holdband(["demo", "d"], { cwd: folder });
    write(join(folder, "d"), "kitchen.yaml", "holdband: 1\n");
    rmSync(join(folder, "d", night));
    const run = holdband(["demo", "d"], { cwd: folder });
    expect(run.exitCode).toBe(2);
    expect(run.err).toContain("kitchen.yaml");
    expect(readFileSync(join(folder, "d", "kitchen.yaml"), "utf8")).toBe("holdband: 1\n");
  });
});
