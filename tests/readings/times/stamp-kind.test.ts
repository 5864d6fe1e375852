import { describe, expect, it } from "vitest";
import { fitsKind, kindOf } from "../../../src/readings/times/stamp-kind.ts";
import { createStampReader } from "../../../src/readings/times/stamp.ts";

const read = (cell: string) => {
  const reader = createStampReader();
  return reader.read([cell]) ? { ...reader.stamp } : null;
};

const fits = (cell: string, like: string): boolean => fitsKind(read(cell)!, kindOf(read(like)!));

describe("kindOf", () => {
  it("tells date, half of the day and zone", () => {
    expect(kindOf(read("2026-11-25T22:30Z")!)).toEqual({
      dated: true,
      yearless: false,
      half: false,
      zoned: true,
    });
    expect(kindOf(read("10:30 PM")!)).toEqual({
      dated: false,
      yearless: false,
      half: true,
      zoned: false,
    });
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
    ["11/25 22:30", "11/25/2026 22:30"],
    ["11/25/2026 22:30", "11/25 22:30"],
  ])("turns %s away among %s", (cell, like) => expect(fits(cell, like)).toBe(false));
});
