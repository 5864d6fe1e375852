import { describe, expect, it } from "vitest";
import { daysFromCivil, fullYear, isCivil } from "../../../src/readings/times/civil-days.ts";

describe("daysFromCivil", () => {
  it("agrees with the language's own UTC calendar for every day of four centuries", () => {
    const first = Date.UTC(1900, 0, 1) / 86_400_000;
    for (let day = first; day < first + 146_097; day++) {
      const date = new Date(day * 86_400_000);
      const parts = [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()] as const;
      if (daysFromCivil(...parts) !== day || !isCivil(...parts)) expect.fail(date.toISOString());
    }
  });
});

describe("isCivil", () => {
  // Gregorian rule: 1900 is no leap year, 2000 is one.
  it.each([
    [2026, 2, 29],
    [1900, 2, 29],
    [2026, 4, 31],
    [2026, 13, 1],
    [2026, 0, 1],
    [2026, 1, 0],
  ])("%d-%d-%d does not exist", (...date) => expect(isCivil(...date)).toBe(false));
  it("2000-02-29 does", () => expect(isCivil(2000, 2, 29)).toBe(true));
});

describe("fullYear", () => {
  // POSIX.1-2017, strptime, %y: 69..99 are 1969..1999, 00..68 are 2000..2068.
  it.each([
    [69, 1969],
    [99, 1999],
    [0, 2000],
    [68, 2068],
  ])("%d is %d", (written, year) => expect(fullYear(written, 2)).toBe(year));
  it("leaves a year of four digits", () => expect(fullYear(1987, 4)).toBe(1987));
});
