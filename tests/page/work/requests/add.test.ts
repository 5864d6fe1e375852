import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Readings } from "../../../../src/page/protocol.ts";
import { holdband, program, temporaryFolder, write } from "../../../cli/run-holdband.ts";
import { quietNight, wordsOf } from "../nights.ts";
import { chosen, emptyShelf, equipped, equippedRoom, shelfKeeper } from "../page-room.ts";

const ofFiles = (...files: ReturnType<typeof chosen>[]): Readings => ({ kind: "files", files });
const night = ofFiles(chosen("folder/night.csv", quietNight));
const setUp = {
  appliance: ["step-cooker"],
  setting: ["38"],
  container: ["jars"],
  thermometer: ["pen"],
  room: ["18..23"],
  notes: ["lid on"],
};

const kitchenFolder = (): string => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, "readings"));
  write(folder, "kitchen.yaml", equipped);
  return folder;
};
const textIn = (folder: string): string => readFileSync(join(folder, "kitchen.yaml"), "utf8");

describe("a water test into the kitchen", () => {
  it("leaves the same bytes as the command line, and says the same of its night", async () => {
    const folder = kitchenFolder();
    write(folder, "night.csv", quietNight);
    const run = holdband(["add", "night.csv", ...wordsOf(setUp), "--json"], { cwd: folder });
    expect(run.err).toBe("");
    const page = await equippedRoom();
    const added = await page.ok("add", { readings: night, options: setUp });
    expect(added.state.text).toBe(textIn(folder));
    expect(added.state.missing).toEqual([]);
    const { test, ...said } = JSON.parse(run.out) as { test: { id: string } };
    expect(added.id).toBe(test.id);
    const data = await page.ok("save", { what: "night-data" });
    expect(JSON.parse(await data.content.text())).toEqual(said);
    expect(added.remarks).toEqual([
      `Stored as ${test.id}: readings/night.csv.`,
      "This judges the night by itself; the kitchen's report weighs it together with the other tests.",
    ]);
    expect(added.night.summary).toMatch(/likely to hold/);
  });

  it("takes typed readings as `enter` does, comments and all", async () => {
    const lines = ["22:00 20.1", "23:00 38.1 # lid lifted", "1:00 38.2", "3:00 38.0", "7:00 38.1"];
    const options = { ...setUp, date: ["2026-10-18"], probe: ["Jar=food"] };
    const folder = kitchenFolder();
    const words = [program, "enter", ...wordsOf(options), "--json"];
    const run = spawnSync(process.execPath, words, {
      cwd: folder,
      input: lines.join("\n"),
      encoding: "utf8",
    });
    expect(run.stderr).toBe("");
    const page = await equippedRoom();
    const readings = { kind: "typed", lines: lines.join("\n") } as const;
    const { state } = await page.ok("add", { readings, options });
    expect(state.text).toBe(textIn(folder));
    const [path = ""] = state.kitchen.tests.flatMap(({ files }) => files.map((one) => one.path));
    const saved = await page.ok("save", { what: "night-readings" });
    expect(await saved.content.text()).toBe(readFileSync(join(folder, path), "utf8"));
    expect(path).toBe(`readings/${saved.name}`);
  });

  it("judges nothing where no culture is listed, and says so", async () => {
    const page = await equippedRoom();
    await page.ok("remove", { section: "culture", id: "yoghurt" });
    const { remarks } = await page.ok("add", { readings: night, options: setUp });
    expect(remarks[1]).toBe("No culture is listed in this kitchen, so nothing was judged.");
  });

  it("is kept in memory where the browser's store is full, and said not to be kept", async () => {
    const shelf = emptyShelf();
    const page = await equippedRoom("", shelfKeeper(shelf));
    shelf.full = "the browser has no more room for it";
    const { state } = await page.ok("add", { readings: night, options: setUp });
    expect(state.kitchen.tests).toHaveLength(1);
    expect(state.missing).toEqual([]);
    expect(state.notKept).toMatch(/the browser has no more room for it.*Save your kitchen/);
    const report = await page.ok("report", null);
    expect(report.main).toMatch(/38\s°C/);
  });

  it("tells how far it has read", async () => {
    const page = await equippedRoom();
    await page.ok("add", { readings: night, options: setUp });
    expect(page.told).toContainEqual([quietNight.length, quietNight.length]);
  });
});

describe("a water test that cannot be taken", () => {
  it.each([
    ["nothing to read", ofFiles(), setUp, "option-missing"],
    ["no appliance", night, { container: ["jars"] }, "option-missing"],
    ["an appliance that is not there", night, { ...setUp, appliance: ["box"] }, "not-in-kitchen"],
    ["a setting that is none", night, { ...setUp, setting: ["99"] }, "setting-invalid"],
    ["a strange thermometer", night, { ...setUp, thermometer: ["stick"] }, "not-in-kitchen"],
    ["no temperatures", ofFiles(chosen("a.csv", "a,b\nc,d\n")), setUp, "no-temperature-column"],
    [
      "one file twice",
      ofFiles(chosen("a.csv", quietNight), chosen("b.csv", quietNight)),
      setUp,
      "options-contradict",
    ],
    [
      "a typed line that is none",
      { kind: "typed", lines: "22:00 20\nlater" },
      setUp,
      "reading-unread",
    ],
  ] as const)("changes nothing: %s", async (_, readings, options, code) => {
    const shelf = emptyShelf();
    const page = await equippedRoom("", shelfKeeper(shelf));
    const before = page.room.store.text();
    expect((await page.problem("add", { readings, options })).code).toBe(code);
    expect(page.room.store.text()).toBe(before);
    expect([page.room.store.raw().size, shelf.raw.size]).toEqual([0, 0]);
  });

  it("is one that the kitchen has already, under whatever name", async () => {
    const page = await equippedRoom();
    await page.ok("add", { readings: night, options: setUp });
    const again = ofFiles(chosen("other.csv", quietNight));
    const problem = await page.problem("add", { readings: again, options: setUp });
    expect(problem).toMatchObject({ code: "file-known", facts: { stored: "readings/night.csv" } });
  });
});
