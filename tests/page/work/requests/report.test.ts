import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { holdband } from "../../../cli/run-holdband.ts";
import { demoFiles, demoFolder, demoText } from "../demo-kitchen.ts";
import { quietNight } from "../nights.ts";
import { chosen, equippedRoom, pageRoom } from "../page-room.ts";

/** Both are made at another minute. */
const withoutTime = (html: string): string =>
  html.replaceAll(/(Report made )[^.]*? UTC( by)/g, "$1at some time$2");

/** In the page nothing need be said of the command line's options. */
const withoutHints = (text: string): string => text.replaceAll(/ \(--[a-z][^()<>]*\)/g, "");

describe("the kitchen's report", () => {
  it("is the command line's own, and so is its data", async () => {
    const folder = demoFolder();
    const run = holdband(["report", "--json"], { cwd: folder });
    expect(run.err).toBe("");
    // The ages of checks go by today's date, so both must have the same.
    const page = pageRoom(undefined, new Date());
    await page.ok("open", { files: demoFiles() });
    const shown = await page.ok("report", null);
    const saved = await page.ok("save", { what: "kitchen-report" });
    expect(saved.name).toBe("kitchen.html");
    const html = await saved.content.text();
    const theirs = readFileSync(join(folder, "reports", "kitchen.html"), "utf8");
    expect(withoutTime(html)).toBe(withoutTime(theirs));
    expect(withoutHints(html)).toContain(withoutHints(shown.main));
    const data = await page.ok("save", { what: "kitchen-data" });
    const { report: _path, ...said } = JSON.parse(run.out) as Record<string, unknown>;
    expect(JSON.parse(await data.content.text())).toEqual(said);
    // Two whole reports of eight nights are made, on a machine that may be busy.
  }, 180_000);

  it("is made again only where something changed", async () => {
    const page = await equippedRoom();
    const options = { appliance: ["warm-cooker"], container: ["jars"] };
    const readings = { kind: "files", files: [chosen("night.csv", quietNight)] } as const;
    await page.ok("add", { readings, options });
    await page.ok("report", null);
    const first = page.room.desk.kitchen;
    expect(first?.parts).not.toBeNull();
    await page.ok("save", { what: "kitchen-report" });
    expect(page.room.desk.kitchen).toBe(first);
    await page.ok("edit", { section: "culture", words: ["reuteri"], options: {} });
    const { main } = await page.ok("report", null);
    expect(page.room.desk.kitchen).not.toBe(first);
    expect(main).toContain("Low long-hold milk culture");
  });

  it("is a short one of a kitchen without tests", async () => {
    const page = await equippedRoom();
    const shown = await page.ok("report", null);
    expect(shown.main).toContain("No water test to report on yet");
  });

  it("is refused where none of the readings are here, in the words of the command line", async () => {
    const page = pageRoom();
    const { state } = await page.ok("open", { files: [chosen("kitchen.yaml", demoText())] });
    expect(state.missing.length).toBeGreaterThan(5);
    const problem = await page.problem("report", null);
    expect(problem).toMatchObject({
      code: "no-test-readable",
      facts: { count: state.kitchen.tests.length },
    });
  });
});
