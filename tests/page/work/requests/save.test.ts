import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { holdband, temporaryFolder } from "../../../cli/run-holdband.ts";
import { demoFiles, demoReadings, demoText } from "../demo-kitchen.ts";
import { fahrenheitNight, quietNight } from "../nights.ts";
import { chosen, equippedRoom, pageRoom } from "../page-room.ts";

const bytesOf = async (content: Blob) => new Uint8Array(await content.arrayBuffer());

/** On disk as any unzipping program would put it. */
const unpackedFolder = (zip: Uint8Array): string => {
  const folder = temporaryFolder();
  for (const [path, bytes] of Object.entries(unzipSync(zip))) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), bytes);
  }
  return folder;
};

/** Two tests of one set-up, the second in a degF logger's file, a checked thermometer and a batch. */
const smallKitchen = async () => {
  const page = await equippedRoom("", undefined, new Date());
  const options = { appliance: ["warm-cooker"], container: ["jars"], thermometer: ["pen"] };
  const add = (name: string, text: string) =>
    page.ok("add", { readings: { kind: "files", files: [chosen(name, text)] }, options });
  await add("first night.csv", quietNight);
  await add("nächste.csv", fahrenheitNight);
  const check = { ice: ["0.2", "0.3"], date: ["2026-02-14"] };
  await page.ok("edit", { section: "thermometer", words: ["pen"], options: check });
  const batch = { appliance: ["warm-cooker"], date: ["2026-03-01"], separated: ["much"] };
  await page.ok("edit", { section: "batch", words: [], options: batch });
  return page;
};

describe("a kitchen saved as a zip", () => {
  it("is a folder that the command line works in, with the same answers", async () => {
    const page = await smallKitchen();
    const saved = await page.ok("save", { what: "kitchen-zip" });
    expect(saved.name).toBe("kitchen.zip");
    const folder = unpackedFolder(await bytesOf(saved.content));
    const run = holdband(["report", "--json"], { cwd: folder });
    expect(run.err).toBe("");
    const { report: _path, ...said } = JSON.parse(run.out) as Record<string, unknown>;
    const data = await page.ok("save", { what: "kitchen-data" });
    expect(JSON.parse(await data.content.text())).toEqual(said);
    // A whole report is made, on a machine that may be busy.
  }, 180_000);

  it("has the same bytes each time, and comes back as it was", async () => {
    const page = pageRoom();
    await page.ok("open", { files: demoFiles() });
    const first = await bytesOf((await page.ok("save", { what: "kitchen-zip" })).content);
    const other = pageRoom();
    await other.ok("open", { files: [chosen("kitchen.zip", first)] });
    const second = await bytesOf((await other.ok("save", { what: "kitchen-zip" })).content);
    expect(Buffer.from(second).equals(Buffer.from(first))).toBe(true);
    expect(other.room.store.text()).toBe(demoText());
  });

  it("holds the readings byte for byte, those of a test taken out as well", async () => {
    const page = await equippedRoom();
    const options = { appliance: ["warm-cooker"], container: ["jars"], name: ["one"] };
    const readings = { kind: "files", files: [chosen("night.csv", quietNight)] } as const;
    await page.ok("add", { readings, options });
    await page.ok("remove", { section: "test", id: "one" });
    const saved = await page.ok("save", { what: "kitchen-zip" });
    const files = unzipSync(await bytesOf(saved.content));
    expect(Object.keys(files)).toEqual(["kitchen.yaml", "readings/night.csv"]);
    expect(Buffer.from(files["readings/night.csv"] ?? []).toString("utf8")).toBe(quietNight);
  });

  it("leaves out what is missing", async () => {
    const page = pageRoom();
    const [one] = demoReadings();
    await page.ok("open", { files: [chosen("kitchen.yaml", demoText()), one!] });
    const saved = await page.ok("save", { what: "kitchen-zip" });
    const names = Object.keys(unzipSync(await bytesOf(saved.content)));
    expect(names).toEqual(["kitchen.yaml", one?.name.replace("kitchen/", "")]);
  });
});

describe("kitchen.yaml saved", () => {
  it("has the bytes that were opened", async () => {
    const page = pageRoom();
    const text = `${demoText()}# mine: "ä" \r\n`;
    await page.ok("open", { files: [chosen("kitchen.yaml", text)] });
    const saved = await page.ok("save", { what: "kitchen-yaml" });
    expect(saved.name).toBe("kitchen.yaml");
    expect(await saved.content.text()).toBe(text);
  });
});

describe("a file to save where there is nothing of the kind", () => {
  it.each(["night-report", "night-data", "night-readings"] as const)("%s", async (what) => {
    expect((await pageRoom().problem("save", { what })).code).toBe("option-missing");
  });

  it("of readings that came from a file", async () => {
    const page = pageRoom();
    const readings = { kind: "files", files: [chosen("night.csv", quietNight)] } as const;
    await page.ok("check", { readings, options: { culture: ["reuteri"] } });
    expect((await page.problem("save", { what: "night-readings" })).code).toBe("option-missing");
  });
});
