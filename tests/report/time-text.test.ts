import { describe, expect, it } from "vitest";
import {
  begunText,
  calendarDay,
  clockTime,
  dateAndClock,
  duration,
  firstReading,
} from "../../src/report/time-text.ts";
import { fileOf } from "../probe-files.ts";

describe("duration", () => {
  it.each([
    [0, "0 min"],
    [0.2, "under a minute"],
    [40, "40 min"],
    [59.6, "1 h"],
    [460, "7 h 40 min"],
    [1440, "24 h"],
    [2879.7, "48 h"],
  ])("writes %d minutes as %s", (minutes, text) => {
    expect(duration(minutes, " ")).toBe(text);
  });
});

describe("clock times", () => {
  const start = Date.UTC(2026, 2, 14, 21, 37);
  it("are the logger's own, past midnight too", () => {
    expect(clockTime(start, 0)).toBe("21:37");
    expect(clockTime(start, 200)).toBe("00:57");
    expect(dateAndClock(start, 200)).toBe("2026-03-15 00:57");
  });
  it("are absent where the file has none", () => {
    expect(clockTime(null, 5)).toBeNull();
    expect(dateAndClock(null, 5)).toBeNull();
  });
  it("tell when a file began, later than minute 0 where another logger began first", () => {
    const probes = [{ ...fileOf().probes[0]!, minutes: Float64Array.of(25, 26) }];
    expect(firstReading({ startWallClock: start, probes })).toBe("2026-03-14 22:02");
    expect(firstReading({ startWallClock: null, probes })).toBeNull();
    expect(firstReading({ startWallClock: Date.UTC(1970, 0, 1, 21, 37), probes })).toBe("22:02");
  });
});

describe("days", () => {
  it("are told only where the file tells them: a bare clock counts from 1970", () => {
    expect(calendarDay(Date.UTC(2026, 2, 14, 21, 37))).toBe("2026-03-14");
    expect(calendarDay(Date.UTC(1970, 0, 1, 21, 37))).toBeNull();
    // Two bare clocks, the second from the evening before the first's midnight.
    expect(calendarDay(Date.UTC(1969, 11, 31, 22, 0))).toBeNull();
    expect(calendarDay(null)).toBeNull();
    expect(begunText(Date.UTC(2026, 2, 14, 21, 37))).toBe("begun 2026-03-14 21:37");
    expect(begunText(Date.UTC(1970, 0, 1, 21, 37))).toBe("begun 21:37");
    expect(begunText(null)).toBeNull();
  });
});
