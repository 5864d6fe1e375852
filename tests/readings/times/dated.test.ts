import { describe, expect, it } from "vitest";
import { foundTimes, problemOf } from "./time-rows.ts";

describe("createDatedAccumulator", () => {
  it("keeps rows in the order of the file", () => {
    const found = foundTimes(["2026-11-26 00:00:05", "2026-11-25 23:59:55", "2026-11-26 00:00:10"]);
    expect(Array.from(found.seconds)).toEqual([5, -5, 10]);
    expect(found.startWallClock).toBe(Date.UTC(2026, 10, 26, 0, 0, 5));
  });

  it("asks where a dated clock lost its AM and PM", () => {
    const rows = ["11/25/2026 11:30", "11/25/2026 12:30", "11/25/2026 1:30", "11/25/2026 2:30"];
    expect(problemOf(rows, { file: "night.csv" })).toEqual({
      code: "time-undecidable",
      facts: { file: "night.csv", line: 4, found: "1:30" },
    });
  });

  it("mixes known and open dates in one column", () => {
    const found = foundTimes(["2026-04-03 23:59", "04/04/2026 00:01", "04/05/2026 00:01"]);
    expect(found.dateOrder).toBe("month-first");
    expect(Array.from(found.seconds, (value) => value - found.seconds[0]!)).toEqual([
      0, 120, 86520,
    ]);
  });
});
