import { describe, expect, it } from "vitest";
import { mendClockJumps } from "../../../src/readings/times/mend.ts";
import { foundTimes, secondsFrom } from "./time-rows.ts";

/** Wall clock stamps of a zone, by the language's time zone database: the outside reference. */
const localStamps = (zone: string, startUtc: number, step: number, count: number): string[] => {
  const format = new Intl.DateTimeFormat("sv-SE", {
    timeZone: zone,
    dateStyle: "short",
    timeStyle: "medium",
  });
  return Array.from({ length: count }, (_, index) => format.format(startUtc + index * step * 1000));
};

const even = (count: number, step: number): number[] =>
  Array.from({ length: count }, (_, index) => index * step);

/** Nights of 2026 on which the clock changes, as the time zone database has them. */
const changes = [
  ["Europe/Berlin", Date.UTC(2026, 2, 29, 0, 0), 60],
  ["Europe/Berlin", Date.UTC(2026, 9, 25, 0, 0), -60],
  ["Europe/London", Date.UTC(2026, 2, 29, 0, 0), 60],
  ["Europe/London", Date.UTC(2026, 9, 25, 0, 0), -60],
  ["Europe/Helsinki", Date.UTC(2026, 2, 29, 0, 0), 60],
  ["Europe/Helsinki", Date.UTC(2026, 9, 25, 0, 0), -60],
  ["America/New_York", Date.UTC(2026, 2, 8, 6, 0), 60],
  ["America/New_York", Date.UTC(2026, 10, 1, 5, 0), -60],
  ["America/Santiago", Date.UTC(2026, 3, 5, 2, 0), -60],
  ["America/Santiago", Date.UTC(2026, 8, 6, 3, 0), 60],
  ["Australia/Sydney", Date.UTC(2026, 9, 3, 15, 0), 60],
  ["Australia/Sydney", Date.UTC(2026, 3, 4, 15, 0), -60],
] as const;

const regular = (from: number, count: number): number[] =>
  Array.from({ length: count }, (_, index) => from + index * 60);
const hour = 3600;

const shown = (text: string): number => Date.parse(`${text.replace(" ", "T")}Z`) / 1000;

describe("mendClockJumps", () => {
  describe.each(changes)("%s at %d: %d min", (zone, utc, jumpMinutes) => {
    it.each([5, 60, 300, 600])("readings every %d s run on evenly", (step) => {
      const count = Math.ceil((4 * 3600) / step);
      const rows = localStamps(zone, utc - 3_600_000, step, count);
      const found = foundTimes(rows);
      expect(Array.from(found.seconds, (value) => value - found.seconds[0]!)).toEqual(
        even(count, step),
      );
      const told = found.notices.filter(({ code }) => code === "clock-jump-mended");
      expect(told).toHaveLength(1);
      expect(told[0]!.facts).toMatchObject({ jumpMinutes });
      // The heading is line 1, so row n stands on line n + 2; the jump is where the step is odd.
      const at = rows.findIndex((_, row) => {
        return row > 0 && shown(rows[row]!) - shown(rows[row - 1]!) !== step;
      });
      expect(told[0]!.facts).toMatchObject({ line: at + 2 });
    });
  });

  it("mends a clock without dates as well", () => {
    const rows = localStamps("Europe/Berlin", Date.UTC(2026, 9, 24, 21), 60, 600);
    const clocks = rows.map((stamp) => stamp.slice(11));
    expect(secondsFrom(clocks)).toEqual(even(600, 60));
  });

  it("leaves stamps with an offset alone: they are instants", () => {
    const rows = [
      "2026-03-29T01:59:00+01:00",
      "2026-03-29T03:00:00+02:00",
      "2026-03-29T03:01:00+02:00",
    ];
    expect(foundTimes(rows)).toMatchObject({ notices: [] });
    expect(secondsFrom(rows)).toEqual([0, 60, 120]);
  });

  it.each([
    ["an hour missing by day", [...regular(13 * hour, 60), ...regular(15 * hour, 60)]],
    ["half an hour missing at night", [...regular(hour, 60), ...regular(2.5 * hour, 60)]],
    ["an hour missing off the hour", [...regular(0.5 * hour, 60), ...regular(2.5 * hour, 60)]],
    ["three hours missing at night", [...regular(hour, 60), ...regular(5 * hour, 60)]],
    ["one row an hour behind", [...regular(hour, 59), hour + 60, ...regular(hour + 3540, 60)]],
    ["readings an hour apart", [hour, 3 * hour, 4 * hour, 5 * hour]],
    ["readings by hand", [0, 1800, 4000, 5400, 3 * hour, 5 * hour]],
    ["one reading", [hour]],
    ["none", []],
  ])("leaves %s as it is", (_name, list) => {
    const seconds = Float64Array.from(list);
    expect(mendClockJumps(seconds)).toEqual([]);
    expect(Array.from(seconds)).toEqual(list);
  });
});
