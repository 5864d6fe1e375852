import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { problemText } from "../../../../src/problem.ts";
import { holdband, temporaryFolder, write } from "../../../cli/run-holdband.ts";
import { demoFiles, demoReadings, demoText } from "../demo-kitchen.ts";
import { quietNight } from "../nights.ts";
import { chosen, emptyShelf, equipped, equippedRoom, pageRoom, shelfKeeper } from "../page-room.ts";

const plain = (text: string): string => text.replaceAll(/\s+/g, " ").trim();

describe("opening a kitchen", () => {
  it("takes its file with its readings, and keeps both for the next visit", async () => {
    const shelf = emptyShelf();
    const page = pageRoom(shelfKeeper(shelf));
    const { state, remarks } = await page.ok("open", { files: demoFiles() });
    expect(state.text).toBe(demoText());
    expect(state.missing).toEqual([]);
    expect(state.started).toBe(true);
    expect(remarks).toEqual(["Opened kitchen.yaml with 8 water tests."]);
    const next = pageRoom(shelfKeeper(shelf));
    const again = await next.ok("start", null);
    expect([again.text, again.missing]).toEqual([demoText(), []]);
  });

  it("says which readings are missing, and takes them later, under any name", async () => {
    const page = pageRoom();
    const first = await page.ok("open", { files: [chosen("kitchen.yaml", demoText())] });
    expect(first.state.missing.length).toBeGreaterThan(5);
    expect(first.state.missing[0]).toEqual({
      test: first.state.kitchen.tests[0]?.id,
      path: first.state.kitchen.tests[0]?.files[0]?.path,
    });
    expect(first.remarks[1]).toMatch(/^Still missing: readings\/.* and \d more\. Open them too/);
    const renamed = demoReadings().map(({ content }, at) => ({ name: `${at}.dat`, content }));
    const then = await page.ok("open", { files: renamed });
    expect(then.state.missing).toEqual([]);
    expect(then.remarks).toEqual([`Took in ${renamed.length} files of readings.`]);
    expect(page.told.at(-1)?.[0]).toBe(page.told.at(-1)?.[1]);
  });

  it("never uses a file of a listed name with other bytes", async () => {
    const page = pageRoom();
    const [one] = demoReadings();
    const name = one!.name;
    const opened = await page.ok("open", {
      files: [chosen("kitchen.yaml", demoText()), chosen(name, "Time,Jar (degC)\n")],
    });
    expect(opened.remarks[1]).toMatch(/as it was when it was added .* found it changed/);
    expect(opened.state.missing.map(({ path }) => `kitchen/${path}`)).toContain(name);
    const alone = await page.problem("open", { files: [chosen(name, "Time,Jar (degC)\n")] });
    expect(alone.code).toBe("raw-file-changed");
    expect(page.room.store.raw().size).toBe(0);
  });

  it("leaves strange files aside and says so", async () => {
    const page = await equippedRoom();
    const { remarks, state } = await page.ok("open", { files: [chosen("night.csv", quietNight)] });
    expect(remarks).toEqual([
      "Left aside: night.csv. No water test of this kitchen lists it; new readings are entered as a new water test.",
    ]);
    expect(state.text).toBe(equipped);
  });

  it("keeps readings that are here already where a changed kitchen.yaml still lists them", async () => {
    const page = pageRoom();
    await page.ok("open", { files: demoFiles() });
    const changed = demoText().replace("unit: C", "unit: F");
    const { state } = await page.ok("open", { files: [chosen("other name.yml", changed)] });
    expect(state.kitchen.shownUnit).toBe("degF");
    expect(state.missing).toEqual([]);
  });

  it("drops the readings of a kitchen that another has replaced", async () => {
    const shelf = emptyShelf();
    const page = pageRoom(shelfKeeper(shelf));
    await page.ok("open", { files: demoFiles() });
    await page.ok("open", { files: [chosen("kitchen.yaml", equipped)] });
    expect([page.room.store.raw().size, shelf.raw.size]).toEqual([0, 0]);
  });

  it("reads a zip of the folder, packed from inside or outside", async () => {
    for (const around of ["", "my kitchen/"]) {
      const files = Object.fromEntries([
        [`${around}kitchen.yaml`, strToU8(equipped)],
        [`${around}kitchen.previous.yaml`, strToU8("holdband: 1\n")],
        [`${around}reports/kitchen.html`, strToU8("<!doctype html>")],
        [`../${around}kitchen.yaml`, strToU8("holdband: 1\n")],
      ]);
      const page = pageRoom();
      // oxlint-disable-next-line no-await-in-loop -- one after the other
      const { state, remarks } = await page.ok("open", {
        files: [chosen("kitchen.zip", new Uint8Array(zipSync(files)))],
      });
      expect(state.text).toBe(equipped);
      expect(remarks).toEqual(["Opened kitchen.yaml with 0 water tests."]);
    }
  });
});

describe("opening what is no kitchen", () => {
  const broken = "holdband: 1\nunit: X\nappliances:\n  box:\n    kind: oven\n    control: fixed\n";

  it("gives every mistake with its line, as the command line does, and leaves the kitchen before", async () => {
    const shelf = emptyShelf();
    const page = await equippedRoom("", shelfKeeper(shelf));
    const problem = await page.problem("open", { files: [chosen("kitchen.yaml", broken)] });
    const folder = temporaryFolder();
    const path = write(folder, "kitchen.yaml", broken);
    const run = holdband(["report"], { cwd: folder });
    expect(problem.code).toBe("kitchen-invalid");
    expect(plain(problemText(problem))).toBe(plain(run.err.replaceAll(path, "kitchen.yaml")));
    expect(problemText(problem)).toMatch(/line 2[\s\S]*line 5/i);
    expect([page.room.store.text(), shelf.text]).toEqual([equipped, equipped]);
  });

  it.each([
    ["nothing", [], "option-missing"],
    ["a report", [chosen("night.html", "<!doctype html>")], "option-missing"],
    [
      "another encoding",
      [chosen("k.yaml", new Uint8Array([0xff, 0xfe, 0x68, 0]))],
      "kitchen-not-utf8",
    ],
    ["a broken zip", [chosen("k.zip", "PK no more")], "file-unreadable"],
    [
      "two kitchens",
      [chosen("a/k.yaml", equipped), chosen("b/k.yaml", equipped)],
      "options-contradict",
    ],
    ["anchors", [chosen("k.yaml", "a: &a [*a]\n")], "kitchen-invalid"],
    ["a prototype", [chosen("k.yaml", "holdband: 1\n__proto__: { x: 1 }\n")], "kitchen-invalid"],
    [
      "a path that leaves the folder",
      [
        chosen(
          "k.yaml",
          `${equipped}tests:\n  t:\n    appliance: warm-cooker\n    container: jars\n    files:\n      - { file: ../../x.csv, sha256: ${"0".repeat(64)}, probes: { Jar: { place: food } } }\n`,
        ),
      ],
      "kitchen-invalid",
    ],
  ] as const)("is refused and changes nothing: %s", async (_, files, code) => {
    const page = await equippedRoom();
    expect((await page.problem("open", { files })).code).toBe(code);
    expect(page.room.store.text()).toBe(equipped);
  });
});
