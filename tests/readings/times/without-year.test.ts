import { describe, expect, it } from "vitest";
import { runsWithoutYear } from "../../../src/readings/times/without-year.ts";
import { createDateRuns } from "../../../src/readings/times/date-runs.ts";
import { foundTimes, problemOf } from "./time-rows.ts";

const shapes = {
  "11/25 22:30": (at: Date) => `${at.getUTCMonth() + 1}/${at.getUTCDate()}`,
  "25.11. 22:30": (at: Date) => `${at.getUTCDate()}.${at.getUTCMonth() + 1}.`,
  "25.11 22:30": (at: Date) => `${at.getUTCDate()}.${at.getUTCMonth() + 1}`,
  "Nov 25 22:30": (at: Date) => at.toUTCString().replace(/^..., (\d+) (...).*/u, "$2 $1"),
  "25 Nov 22:30": (at: Date) => at.toUTCString().replace(/^..., (\d+) (...).*/u, "$1 $2"),
};

/** Stamps by the language's calendar, the outside reference. */
const stamps = (shape: keyof typeof shapes, start: number, count: number): string[] =>
  Array.from({ length: count }, (_, row) => {
    const at = new Date(start + row * 1_800_000);
    return `${shapes[shape](at)} ${at.toISOString().slice(11, 19)}`;
  });

const nights = [
  ["new year", Date.UTC(2026, 11, 31, 20)],
  ["28 February of 2027", Date.UTC(2027, 1, 28, 20)],
  ["28 February of 2028, a leap year", Date.UTC(2028, 1, 28, 20)],
  ["a night in November", Date.UTC(2026, 10, 25, 20)],
] as const;

describe("dates without a year", () => {
  for (const shape of Object.keys(shapes) as (keyof typeof shapes)[])
    it.each(nights)(`${shape}, over %s`, (_, start) => {
      const found = foundTimes(stamps(shape, start, 40));
      expect(Array.from(found.seconds, (second) => second - found.seconds[0]!)).toEqual(
        Array.from({ length: 40 }, (__, row) => row * 1800),
      );
      const shown = new Date(found.startWallClock!).toISOString();
      expect(shown.slice(0, 4)).toBe("1970");
      expect(shown.slice(4)).toBe(new Date(start).toISOString().slice(4));
      expect(found.notices.map(({ code }) => code)).toContain("year-unknown");
    });

  it("takes 22:10:15 after Nov 25 for a clock, not for the year 22", () => {
    const found = foundTimes(["Nov 25 22:10:15", "Nov 25 22:10:45"]);
    expect([...found.seconds]).toEqual([79_815, 79_845]);
  });

  it("asks where day and month cannot be told apart", () => {
    expect(problemOf(["11/05 22:30", "11/05 22:40"])).toMatchObject({
      code: "date-order-undecidable",
    });
  });
});

describe("runsWithoutYear", () => {
  it("goes back for a row of the old year", () => {
    const runs = createDateRuns();
    const dates = [
      [31, 12],
      [1, 1],
      [31, 12],
      [1, 1],
    ] as const;
    for (const [row, [first, second]] of dates.entries())
      runs.addOpen(row, { first, second, year: 1972, shortYear: false });
    const found = runsWithoutYear(runs);
    expect(dates.map((_, run) => found.dayOf(run, "day-first"))).toEqual([364, 365, 364, 365]);
  });
});
