import { describe, expect, it } from "vitest";
import {
  cellKind,
  isClock,
  isDateOnly,
  isHalfDay,
  isUnitCell,
  looksLikeTime,
} from "../../../src/readings/cells/cell-kind.ts";

describe("cellKind", () => {
  it.each([
    ["", "empty"],
    ["41,2", "number"],
    ["41.2 °C", "number"],
    ["2026-01-05T22:30:00Z", "time"],
    ["05.01.2026", "time"],
    ["1/25/2026 10:30:00 PM", "time"],
    ["05 Jan 2026 22:30", "time"],
    ["22:30", "time"],
    ["22h30", "time"],
    ["20260105T2230", "time"],
    ["ERR", "flag"],
    ["lid 2", "words"],
    ["Serial number", "words"],
  ] as const)("%s is %s", (cell, kind) => {
    expect(cellKind(cell)).toBe(kind);
  });
});

describe("parts of a time", () => {
  it("tells clock, date and half of the day", () => {
    expect([isClock("10:30 PM"), isClock("2026-01-05"), isClock("41.2")]).toEqual([
      true,
      false,
      false,
    ]);
    expect([isDateOnly("5.1.26"), isDateOnly("5.1.26 10:00")]).toEqual([true, false]);
    expect([isHalfDay("p.m."), isHalfDay("pump")]).toEqual([true, false]);
    expect(looksLikeTime("10442-7")).toBe(false);
  });
});

describe("isUnitCell", () => {
  it("takes units and patterns, not headings", () => {
    for (const cell of ["", "°C", "[F]", "V", "%RH", "hh:mm:ss", "yyyy-mm-dd"])
      expect(isUnitCell(cell)).toBe(true);
    for (const cell of ["time", "Temp", "Probe 1 (°C)", "temp_c", "Jar"])
      expect(isUnitCell(cell)).toBe(false);
  });
});
