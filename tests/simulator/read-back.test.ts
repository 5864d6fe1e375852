import { describe, expect, it } from "vitest";
import type { Table } from "./dialect-types.ts";
import { readBack } from "./read-back.ts";

const count = 500;
const seconds = Float64Array.from({ length: count }, (_, at) => at * 60);
const celsius = Float64Array.from({ length: count }, (_, at) => 20 + at / 50);
const table: Table = {
  seconds,
  startWallClock: 0,
  resolution: 0.01,
  columns: [{ role: "food", celsius }],
};
const minutes = seconds.map((value) => value / 60);

const kept = (_: number, at: number): boolean => at % 100 !== 7;

describe("readBack", () => {
  it("is content with the table itself, and with a few readings set aside", () => {
    expect(readBack(table, { minutes, celsius })).toBeNull();
    const most = { minutes: minutes.filter(kept), celsius: celsius.filter(kept) };
    expect(readBack(table, most)).toBeNull();
  });

  it("takes the first reading read as the start", () => {
    const later = { minutes: minutes.slice(0, -1), celsius: celsius.slice(1) };
    expect(readBack(table, later)).toBeNull();
  });

  it("sees one wrong value, one wrong time and a wrong unit", () => {
    const off = celsius.with(40, celsius[40]! + 0.1);
    expect(readBack(table, { minutes, celsius: off })).toEqual({
      kind: "wrong readings",
      share: 1 / count,
    });
    const late = minutes.with(40, minutes[40]! + 0.5);
    expect(readBack(table, { minutes: late, celsius })?.kind).toBe("wrong readings");
    const fahrenheit = celsius.map((value) => value * 1.8 + 32);
    expect(readBack(table, { minutes, celsius: fahrenheit })).toEqual({
      kind: "wrong readings",
      share: 1,
    });
  });

  it("sees readings that went missing", () => {
    const half = { minutes: minutes.slice(0, 250), celsius: celsius.slice(0, 250) };
    expect(readBack(table, half)).toEqual({ kind: "lost readings", share: 0.5 });
  });
});
