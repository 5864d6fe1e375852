import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayOf, daysBetween, monthsBetween } from "../../src/advice/calendar-days.ts";

const iso = (day: number): string => new Date(day * 86_400_000).toISOString().slice(0, 10);

describe("days of the calendar", () => {
  it.each([
    // Counted on a wall calendar; 2028 is a leap year.
    ["2026-11-20", "2026-11-20", 0],
    ["2025-12-31", "2026-01-01", 1],
    ["2028-02-28", "2028-03-01", 2],
    ["2026-02-28", "2026-03-01", 1],
    ["2026-07-01", "2026-10-01", 92],
    ["2026-10-01", "2026-07-01", -92],
    ["2026-01-01", "2027-01-01", 365],
  ])("from %s to %s: %i days", (from, to, days) => {
    expect(daysBetween(from, to)).toBe(days);
  });

  it.each([
    ["2026-01-15", "2026-02-14", 0],
    ["2026-01-15", "2026-02-15", 1],
    ["2025-11-30", "2026-03-01", 3],
    ["2025-11-30", "2026-02-28", 2],
    ["2024-05-01", "2026-05-01", 24],
  ])("from %s to %s: %i whole months", (from, to, months) => {
    expect(monthsBetween(from, to)).toBe(months);
  });

  it("three whole months pass within 92 days, wherever they begin", () => {
    // The longest three months of the calendar, July to September, have 31 + 31 + 30 days.
    const start = fc.integer({ min: 0, max: 40_000 });
    fc.assert(
      fc.property(start, (day) => {
        expect(daysBetween(iso(day), iso(day + 92))).toBe(92);
        expect(monthsBetween(iso(day), iso(day + 92))).toBeGreaterThanOrEqual(3);
      }),
    );
  });

  it("a wall clock's day; none where only the time of day is known", () => {
    expect(dayOf(Date.UTC(2026, 1, 19, 23, 59))).toBe("2026-02-19");
    expect(dayOf(Date.UTC(1970, 0, 1, 22, 0))).toBeNull();
    expect(dayOf(-3_600_000)).toBeNull();
    expect(dayOf(null)).toBeNull();
  });
});
