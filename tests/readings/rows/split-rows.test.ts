import { describe, expect, it } from "vitest";
import { read, rounded, setAsideTotal } from "../reading-helpers.ts";

/** Made by hand: one row for each sensor, one temperature column. */
const rows = (count: number, cell: (row: number) => string): string =>
  Array.from({ length: count }, (_, row) => cell(row)).join("\n");
const sensor = (row: number): string => ["jar", "bath", "room air"][row % 3]!;
const celsius = (row: number): number => [38, 40, 21][row % 3]! + Math.floor(row / 3) / 10;

describe("splitRows", () => {
  it("parts rows of several sensors at the same times", async () => {
    const text = `time,sensor,temp C\n${rows(12, (row) => `22:${10 + Math.floor(row / 3)},${sensor(row)},${row === 4 ? "ERR" : celsius(row)}`)}\n`;
    const file = await read(text);
    expect(file.probes.map(({ name, role }) => [name, role])).toEqual([
      ["jar", "food"],
      ["bath", "bath"],
      ["room air", "room"],
    ]);
    expect(file.probes.map(({ minutes }) => Array.from(minutes))).toEqual([
      [0, 1, 2, 3],
      [0, 2, 3],
      [0, 1, 2, 3],
    ]);
    expect(rounded(file.probes[1]!.celsius)).toEqual([40, 40.2, 40.3]);
    expect(file.setAside).toEqual([{ reason: "text-flag", count: 1, firstLine: 6 }]);
    expect(file.rowsRead).toBe(file.rowsUsed + setAsideTotal(file));
    expect(file.intervalSeconds).toBe(60);
    expect(file.notices).toContainEqual({
      code: "probes-split",
      facts: { column: "sensor", names: "jar, bath, room air" },
    });
  });

  it("parts sensors that report at their own times, from one common start", async () => {
    const text = `time,id,temp C\n${rows(12, (row) => `22:${10 + row},${1 + (row % 3)},${celsius(row)}`)}\n`;
    const file = await read(text);
    expect(file.probes.map(({ name }) => name)).toEqual(["id 1", "id 2", "id 3"]);
    expect(file.probes.map(({ minutes }) => Array.from(minutes))).toEqual([
      [0, 3, 6, 9],
      [1, 4, 7, 10],
      [2, 5, 8, 11],
    ]);
  });

  it.each(["jar", "probe"])(
    "does not part a file whose sensor is one and the same, or was replaced: %s",
    async (name) => {
      const text = `time,sensor,temp C\n${rows(20, (row) => `22:${10 + row},${row < 8 ? "jar" : name},${38 + row / 10}`)}\n`;
      const file = await read(text);
      expect(file.probes.map(({ minutes }) => minutes.length)).toEqual([20]);
    },
  );

  it("does not part by what comes and goes with the readings", async () => {
    const text = `time,device,temp C\n${rows(30, (row) => `22:${10 + row},${row % 5 < 3 ? "plain" : "boost"},${38 + row / 10}`)}\n`;
    const file = await read(text);
    expect(file.probes.map(({ minutes }) => minutes.length)).toEqual([30]);
  });

  it("sets aside the rows of what is no temperature", async () => {
    const text = `time,name,value\n${rows(20, (row) => `22:${10 + Math.floor(row / 2)},${["temperature", "rel. humidity"][row % 2]},${row % 2 === 0 ? 38 + row / 10 : 45}`)}\n`;
    const file = await read(text);
    expect(file.probes.map(({ name }) => name)).toEqual(["temperature"]);
    expect(file.setAside).toEqual([{ reason: "other-quantity", count: 10, firstLine: 3 }]);
    expect(file).toMatchObject({ rowsRead: 20, rowsUsed: 10 });
  });

  it("parts rows without times, each sensor from its own first", async () => {
    const text = `reading,mote_id,temp C\n${rows(9, (row) => `${row},${row < 4 ? 1 : 2},${38 + row / 10}`)}\n`;
    const file = await read(text, { intervalSeconds: 60 });
    expect(file.probes.map(({ name, minutes }) => [name, [...minutes]])).toEqual([
      ["mote_id 1", [0, 1, 2, 3]],
      ["mote_id 2", [0, 1, 2, 3, 4]],
    ]);
    expect(file.notices.map(({ code }) => code)).toContain("probes-from-start");
  });

  it("spreads coarse stamps of each sensor by itself", async () => {
    const text = `time,sensor,temp C\n${rows(60, (row) => `22:${10 + Math.floor(row / 6)},${["jar", "bath"][row % 2]},${38 + row / 100}`)}\n`;
    const file = await read(text);
    expect(file.probes.map(({ minutes }) => rounded(minutes.slice(0, 4)))).toEqual([
      [0, 0.3333, 0.6667, 1],
      [0, 0.3333, 0.6667, 1],
    ]);
    expect(file.rowsUsed).toBe(60);
  });
});
