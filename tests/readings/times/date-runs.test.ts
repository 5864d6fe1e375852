import { describe, expect, it } from "vitest";
import { createDateRuns, dayInOrder } from "../../../src/readings/times/date-runs.ts";

const day = (year: number, month: number, date: number): number =>
  Date.UTC(year, month - 1, date) / 86_400_000;

describe("dayInOrder", () => {
  const date = { first: 3, second: 4, year: 2026, shortYear: false };
  it("reads the parts in each order", () => {
    expect(dayInOrder(date, "day-first")).toBe(day(2026, 4, 3));
    expect(dayInOrder(date, "month-first")).toBe(day(2026, 3, 4));
  });
  it("lets the year stand first only where all parts have two digits", () => {
    expect(dayInOrder(date, "year-first")).toBeNaN();
    expect(dayInOrder({ ...date, shortYear: true }, "year-first")).toBe(day(2003, 4, 26));
  });
  it("knows dates that do not exist", () => {
    expect(dayInOrder({ ...date, first: 31 }, "day-first")).toBeNaN();
    expect(dayInOrder({ ...date, first: 31 }, "month-first")).toBeNaN();
  });
});

describe("createDateRuns", () => {
  it("gives back known and open dates as they came, each in its place", () => {
    const runs = createDateRuns();
    runs.addKnown(0, 20_000);
    runs.addOpen(7, { first: 12, second: 11, year: 2026, shortYear: false });
    runs.addOpen(9, { first: 26, second: 11, year: 2025, shortYear: true });
    expect(runs.length).toBe(3);
    expect([runs.rowOf(0), runs.rowOf(1), runs.rowOf(2)]).toEqual([0, 7, 9]);
    expect(runs.dayOf(0, "day-first")).toBe(20_000);
    expect(runs.dayOf(1, "day-first")).toBe(day(2026, 11, 12));
    expect(runs.dayOf(1, "month-first")).toBe(day(2026, 12, 11));
    expect(runs.dayOf(2, "year-first")).toBe(day(2026, 11, 25));
  });
});
