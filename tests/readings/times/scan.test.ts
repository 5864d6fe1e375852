import { describe, expect, it } from "vitest";
import { createScan, scanStamp, shapeOf } from "../../../src/readings/times/scan.ts";

const scan = createScan();
const shape = (...cells: string[]): string | null =>
  scanStamp(scan, cells) ? shapeOf(scan) : null;

describe("scanStamp", () => {
  it.each([
    [["2026-11-25T22:30:05.125Z"], "Y-d-dTd:d:d.tZ"],
    [["  25/11/2026   22:30 "], "d/d/Y d:d"],
    [["25/11/2026", "10:30", "PM"], "d/d/Y d:d a"],
    [["10:30p.m."], "d:da"],
    [["10:30\u00a0p.\u00a0m."], "d:d a"],
    [["20261125223005"], "B H"],
    [["202611252230"], "B Y"],
    [["Wed, Nov 25th 2026"], "M d Y"],
    [["1d 02:03:04"], "dD d:d:d"],
    [["2026-11-25 22:30 \u221205:00"], "Y-d-d d:d -d:d"],
    [["22:30 (daylight time)"], "d:d"],
    [["2026_11"], "Y d"],
  ])("%j is %s", (cells, expected) => {
    expect(shape(...cells)).toBe(expected);
  });

  it.each([
    ["ERROR!"],
    ["22:30 jar"],
    ["22:30;"],
    [""],
    ["   "],
    ["\u{1f321} 20"],
    ["1 ".repeat(40)],
  ])("%j is none", (cell) => expect(shape(cell)).toBeNull());

  it("keeps the numbers, and tells whether kinds are those of the scan before", () => {
    shape("25.11.2026 22:30");
    shape("26.11.2026 23:45");
    expect(scan.sameKinds).toBe(true);
    expect([...scan.values.subarray(0, scan.length)].filter((value) => value > 0)).toEqual([
      26, 11, 2026, 23, 45,
    ]);
    shape("26/11/2026 23:45");
    expect(scan.sameKinds).toBe(false);
  });
});
