import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daysBetween, lastChecked } from "../../src/thermometer/check-age.ts";
import type { ThermometerCheck } from "../../src/thermometer/thermometer.ts";

describe("daysBetween", () => {
  // Gregorian calendar: 2024 and 2000 are leap years, 1900 is not.
  it.each([
    ["2024-02-28", "2024-03-01", 2],
    ["2023-02-28", "2023-03-01", 1],
    ["1900-02-28", "1900-03-01", 1],
    ["2000-01-01", "2001-01-01", 366],
    ["2024-05-01", "2024-05-01", 0],
    ["2024-05-02", "2024-05-01", -1],
  ])("%s to %s: %d", (from, to, days) => expect(daysBetween(from, to)).toBe(days));

  it.each(["2023-02-29", "2024-13-01", "2024-00-10", "2024-1-1", "0050-01-01", "soon", ""])(
    "%j is no date",
    (date) => {
      expect(daysBetween(date, "2024-01-01")).toBeNull();
      expect(daysBetween("2024-01-01", date)).toBeNull();
    },
  );

  it("adds up", () => {
    const day = fc
      .date({ min: new Date("1970-01-01"), max: new Date("2100-01-01"), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    fc.assert(
      fc.property(day, day, day, (a, b, c) => {
        expect(daysBetween(a, b)! + daysBetween(b, c)!).toBe(daysBetween(a, c));
      }),
    );
  });
});

const check = (date: string | null): ThermometerCheck => ({
  kind: "ice",
  readings: [0],
  date,
  confirmed: false,
});

describe("lastChecked", () => {
  it("is the newest date and its age", () => {
    const checks = [check("2024-01-10"), check(null), check("2024-03-01"), check("2023-12-31")];
    expect(lastChecked(checks, "2024-03-31")).toEqual({ date: "2024-03-01", daysAgo: 30 });
  });

  it("passes over dates that cannot be, and may find none", () => {
    expect(lastChecked([check("2024-02-31"), check("2024-02-01")], "2024-02-02")).toEqual({
      date: "2024-02-01",
      daysAgo: 1,
    });
    expect(lastChecked([check(null)], "2024-02-02")).toBeNull();
    expect(lastChecked([check("2024-02-01")], "today")).toBeNull();
  });
});
