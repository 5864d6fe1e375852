import { describe, expect, it } from "vitest";
import { createStampReader, fitsKind, kindOf } from "../../src/readings/time-stamp.ts";

const read = (...cells: string[]) => {
  const reader = createStampReader();
  return reader.read(cells) ? { ...reader.stamp } : null;
};

const fits = (cell: string, like: string): boolean => fitsKind(read(cell)!, kindOf(read(like)!));

describe("createStampReader", () => {
  it("reads the parts of a stamp", () => {
    expect(read("2026-11-25T22:30:05.25+01:30")).toMatchObject({
      year: 2026,
      month: 11,
      day: 25,
      seconds: 81005.25,
      offset: 5400,
      timed: true,
    });
    expect(read("25/11/26 12:05 AM")).toMatchObject({
      year: 2026,
      month: 25,
      day: 11,
      seconds: 300,
      shortYear: true,
    });
    expect(read("22:30 PM")).toMatchObject({ seconds: 81000, offset: NaN });
    expect(read("2.03:00:00")).toMatchObject({ seconds: 2 * 86400 + 10800 });
    expect(read("2026-11-25")).toMatchObject({ timed: false });
  });

  it.each(["22:60", "22:30:60", "2026-11-25 25:00", "2026-11-25 24:01", "20261125 226000"])(
    "turns away %s",
    (cell) => expect(read(cell)).toBeNull(),
  );

  it("reads each stamp by its own shape, whatever came before", () => {
    const reader = createStampReader();
    const cells = [
      "25.11.2026 22:30",
      "junk",
      "2026-11-25 22:31",
      "25.11.2026 22:32",
      "25.11.2026",
      "25.11.2026 22:33:05",
    ];
    const seconds = cells.map((cell) => (reader.read([cell]) ? reader.stamp.seconds : null));
    expect(seconds).toEqual([81000, null, 81060, 81120, 0, 81185]);
  });
});

describe("fitsKind", () => {
  it("lets through what is written like the rest, and a date alone", () => {
    expect(fits("25.11.2026 23:30:05", "2026-11-25 22:30")).toBe(true);
    expect(fits("25.11.2026", "2026-11-25 22:30")).toBe(true);
  });
  it.each([
    ["22:30", "2026-11-25 22:30"],
    ["2026-11-25 22:30", "22:30"],
    ["2026-11-25 10:30", "2026-11-25 10:30 PM"],
    ["2026-11-25 22:30", "2026-11-25 22:30Z"],
    ["2026-11-25", "2026-11-25 22:30Z"],
  ])("turns %s away among %s", (cell, like) => expect(fits(cell, like)).toBe(false));
});
