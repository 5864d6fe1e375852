import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decideDateOrder } from "../../../src/readings/times/date-order.ts";
import { createDateRuns } from "../../../src/readings/times/date-runs.ts";
import { foundTimes, problemOf } from "./time-rows.ts";
import { createOrderVotes, isDateInAnyOrder } from "../../../src/readings/times/date-order.ts";

const both = ["day-first", "month-first"] as const;

const runsOf = (dates: readonly (readonly [number, number])[]) => {
  const runs = createDateRuns();
  for (const [row, [first, second]] of dates.entries())
    runs.addOpen(row, { first, second, year: 2026, shortYear: false });
  return runs;
};

/** Days of each date by the language's calendar, in both orders: brute force. */
const daysBoth = (dates: readonly (readonly [number, number])[]): readonly [number[], number[]] => [
  dates.map(([day, month]) => Date.UTC(2026, month - 1, day) / 86_400_000),
  dates.map(([month, day]) => Date.UTC(2026, month - 1, day) / 86_400_000),
];

const runOn = (days: readonly number[]): boolean =>
  days.every((day, index) => index === 0 || Math.abs(day - days[index - 1]!) <= 7);

const codes = (rows: readonly string[]) => foundTimes(rows).notices.map(({ code }) => code);

describe("decideDateOrder", () => {
  it("agrees with brute force over both orders", () => {
    const part = fc.integer({ min: 1, max: 12 });
    const near = fc.record({
      start: fc.integer({ min: 0, max: 364 }),
      count: fc.integer({ min: 1, max: 6 }),
      swap: fc.boolean(),
    });
    const nights = near.map(({ start, count, swap }) =>
      Array.from({ length: count }, (_, index) => {
        const date = new Date(Date.UTC(2026, 0, 1 + start + index));
        const parts = [date.getUTCDate(), date.getUTCMonth() + 1] as const;
        return swap ? ([parts[1], parts[0]] as const) : parts;
      }).filter(([one, other]) => one <= 12 && other <= 12),
    );
    const scattered = fc.array(fc.tuple(part, part), { minLength: 1, maxLength: 6 });
    let decided = 0;
    fc.assert(
      fc.property(fc.oneof(nights, scattered), (dates) => {
        fc.pre(dates.length > 0);
        const [dayFirst, monthFirst] = daysBoth(dates);
        const found = decideDateOrder(runsOf(dates), both, false);
        if (dayFirst.every((day, index) => day === monthFirst[index])) {
          expect(found?.order).toBeNull();
        } else if (runOn(dayFirst) === runOn(monthFirst)) {
          expect(found).toBeNull();
        } else {
          decided++;
          expect(found?.order).toBe(runOn(dayFirst) ? "day-first" : "month-first");
        }
      }),
      { numRuns: 2000, seed: 3 },
    );
    expect(decided).toBeGreaterThan(200);
  });

  it("goes by convention where only dots tell", () => {
    expect(decideDateOrder(runsOf([[3, 4]]), both, true)?.order).toBe("day-first");
    expect(decideDateOrder(runsOf([[3, 4]]), both, false)).toBeNull();
  });
});

describe("the order of a whole column", () => {
  it.each([
    ["a part beyond 12", ["03/04/2026 10:00", "25/04/2026 10:00"], "day-first"],
    ["a part beyond 12, later", ["03/04/2026 10:00", "03/25/2026 10:00"], "month-first"],
    ["midnight, day first", ["03/04/2026 23:59", "04/04/2026 00:01"], "day-first"],
    ["midnight, month first", ["03/04/2026 23:59", "03/05/2026 00:01"], "month-first"],
    ["the turn of a month", ["30/04/2026 23:59", "01/05/2026 00:01"], "day-first"],
    ["dots", ["03.04.2026 23:59", "03.04.2026 23:58"], "day-first"],
    ["dots against the data", ["03.25.2026 23:59", "03.26.2026 00:01"], "month-first"],
    ["short years that stand first", ["26-11-25 23:59", "26-11-26 00:01"], "year-first"],
    ["short years, one day", ["26-11-25 23:58", "26-11-25 23:59"], "day-first"],
    ["equal parts", ["05/05/2026 23:58", "05/05/2026 23:59"], null],
    ["months as words", ["5 May 2026 23:58", "5 May 2026 23:59"], null],
    ["year first", ["2026-03-04 23:59", "2026-03-05 00:01"], "year-first"],
  ] as const)("%s", (_name, rows, order) => {
    expect(foundTimes(rows).dateOrder).toBe(order);
  });

  it("tells when it was decided by the run of days or by dots, not where a part proves it", () => {
    expect(codes(["03/04/2026 23:59", "04/04/2026 00:01"])).toEqual(["date-order-decided"]);
    expect(codes(["03.04.2026 23:59"])).toEqual(["date-order-decided"]);
    expect(codes(["25/04/2026 23:59"])).toEqual([]);
  });

  it("asks where nothing decides", () => {
    expect(problemOf(["03/04/2026 23:58", "03/04/2026 23:59"], { file: "a.csv" })).toEqual({
      code: "date-order-undecidable",
      facts: { file: "a.csv", line: 2, found: "03/04/2026 23:58" },
    });
    expect(problemOf(["03/04/2026 23:58", "05/06/2026 23:59"])).toMatchObject({
      code: "date-order-undecidable",
    });
  });

  it("heeds what the person says, and names the line that cannot be read so", () => {
    const rows = ["03/04/2026 23:58", "03/04/2026 23:59"];
    expect(foundTimes(rows, { dateOrder: "month-first" })).toMatchObject({
      dateOrder: "month-first",
      startWallClock: Date.UTC(2026, 2, 4, 23, 58),
      notices: [],
    });
    expect(problemOf([...rows, "25/11/2026 00:00"], { dateOrder: "month-first" })).toEqual({
      code: "date-order-contradicted",
      facts: { file: "", line: 4, found: "25/11/2026 00:00", order: "month first" },
    });
  });

  it("turns away a misprint, but stops where the column holds both orders", () => {
    const many = Array.from(
      { length: 300 },
      (_, row) => `25/11/2026 10:${String(row % 60).padStart(2, "0")}`,
    );
    expect(foundTimes([...many, "11/26/2026 10:00", ...many]).seconds.length).toBe(600);
    expect(problemOf([...many.slice(0, 5), "11/26/2026 10:00"])).toMatchObject({
      code: "date-order-contradicted",
    });
  });
});

const date = (first: number, second: number, shortYear = false) => ({
  first,
  second,
  year: 2026,
  shortYear,
});

describe("createOrderVotes", () => {
  it("leaves the orders in which every date exists", () => {
    const votes = createOrderVotes(undefined);
    expect(votes.take(date(3, 4, true))).toBe(true);
    expect(votes.candidates()).toEqual(["day-first", "month-first", "year-first"]);
    expect(votes.take(date(3, 4))).toBe(true);
    expect(votes.candidates()).toEqual(["day-first", "month-first"]);
    expect(votes.take(date(3, 25))).toBe(true);
    expect(votes.candidates()).toEqual(["month-first"]);
  });
  it("turns away a date against all before it", () => {
    const votes = createOrderVotes(undefined);
    votes.take(date(25, 3));
    expect(votes.take(date(3, 25))).toBe(false);
    expect(votes.candidates()).toEqual(["day-first"]);
  });
  it("holds to what was said", () => {
    const votes = createOrderVotes("month-first");
    expect(votes.take(date(25, 3))).toBe(false);
    expect(votes.take(date(3, 25))).toBe(true);
  });
});

describe("isDateInAnyOrder", () => {
  it("tells a date of the other order from a misprint", () => {
    expect(isDateInAnyOrder(date(3, 25))).toBe(true);
    expect(isDateInAnyOrder(date(25, 25))).toBe(false);
    expect(isDateInAnyOrder(date(2, 30))).toBe(false);
  });
});
