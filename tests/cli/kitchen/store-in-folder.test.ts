import { mkdirSync, readdirSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Shell } from "../../../src/cli/command-result.ts";
import type { NewTest, StoredTest, TestFacts } from "../../../src/input/water-test/new-test.ts";
import type { FolderSource } from "../../../src/cli/kitchen/folder-store.ts";
import { storeInFolder } from "../../../src/cli/kitchen/store-in-folder.ts";
import type { Outcome } from "../../../src/problem.ts";
import { listing, write } from "../run-holdband.ts";
import { cookerNight, equippedKitchen } from "./run-kitchen.ts";

const shell: Shell = {
  version: "0.0.0",
  packageRoot: new URL("file:///"),
  colour: false,
  ascii: false,
  width: 80,
  progress: null,
  asks: false,
  now: () => new Date(2026, 9, 4, 12),
};

const said: TestFacts = {
  name: null,
  appliance: "step-cooker",
  setting: "38",
  container: "jars",
  fill: null,
  room: null,
  notes: null,
};

const fromFile = (path: string): NewTest<FolderSource> => ({
  ...said,
  files: [
    { name: basename(path), source: { path }, readingOptions: {}, starts: null, probes: null },
  ],
});

const typed =
  "Time,Jar (°C)\n2026-10-03T22:00,20.5\n2026-10-03T23:30,37.9\n2026-10-04T02:00,38.1\n2026-10-04T06:00,38.0\n";

const fromText = (text: string): NewTest<FolderSource> => ({
  ...said,
  files: [
    {
      name: "by-hand.csv",
      source: { text },
      readingOptions: {},
      starts: null,
      probes: [{ name: "Jar", place: "food", thermometer: null }],
    },
  ],
});

const valueOf = (outcome: Outcome<StoredTest>): StoredTest => {
  if (!outcome.ok) throw new Error(outcome.problem.code);
  return outcome.value;
};

describe("storeInFolder", () => {
  it("stores readings that were typed as it stores a file", async () => {
    const { folder, kitchen } = equippedKitchen();
    const stored = valueOf(await storeInFolder(folder, fromText(typed), shell));
    expect(stored.id).toBe("step-cooker-38-jars-2026-10-03");
    expect(stored.files).toEqual(["readings/by-hand.csv"]);
    expect(stored.reading.analysis?.probes[0]?.series.celsius).toHaveLength(4);
    expect(kitchen().tests[0]?.files[0]?.path).toBe("readings/by-hand.csv");
  });

  it("gives another name to a file whose name is taken by other readings", async () => {
    const { folder } = equippedKitchen();
    await storeInFolder(folder, fromText(typed), shell);
    const other = valueOf(
      await storeInFolder(folder, fromText(typed.replace("38.0", "38.2")), shell),
    );
    expect(other.files[0]).toMatch(/^readings\/by-hand.+\.csv$/);
    expect(other.id).toBe("step-cooker-38-jars-2026-10-03-2");
  });

  it("lists one of two that come at once with the same file, and keeps one copy", async () => {
    const { folder, kitchen } = equippedKitchen();
    const outcomes = await Promise.all([
      storeInFolder(folder, fromFile(cookerNight), shell),
      storeInFolder(folder, { ...fromFile(cookerNight), name: "other" }, shell),
    ]);
    const failures = outcomes.flatMap((one) => (one.ok ? [] : [one.problem.code]));
    expect(failures).toEqual(["file-known"]);
    expect(kitchen().tests).toHaveLength(1);
    expect(readdirSync(join(folder, "readings"))).toEqual(["adjustable-cooker.csv"]);
  });

  it("takes the copy back where kitchen.yaml cannot be written", async () => {
    const { folder, text } = equippedKitchen();
    const before = text();
    // The version before is kept beside it; a folder of that name stands in the way.
    mkdirSync(join(folder, "kitchen.previous.yaml"));
    const outcome = await storeInFolder(folder, fromFile(cookerNight), shell);
    expect(outcome.ok).toBe(false);
    expect(text()).toBe(before);
    expect(readdirSync(join(folder, "readings"))).toEqual([]);
    rmSync(join(folder, "kitchen.previous.yaml"), { recursive: true });
    expect((await storeInFolder(folder, fromFile(cookerNight), shell)).ok).toBe(true);
  });

  it("stores nothing where a file cannot be read or judged", async () => {
    const { folder } = equippedKitchen();
    const bad = write(folder, "bad.csv", "a,b\nx,y\nz,w\n");
    const before = listing(folder);
    expect(await storeInFolder(folder, fromFile(bad), shell)).toMatchObject({ ok: false });
    expect(await storeInFolder(folder, fromText("Time,Jar\n"), shell)).toMatchObject({ ok: false });
    expect(listing(folder)).toEqual(before);
  });
});
