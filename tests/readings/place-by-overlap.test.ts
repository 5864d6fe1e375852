import { describe, expect, it } from "vitest";
import { placeByOverlap, type ClockSpan } from "../../src/readings/place-by-overlap.ts";

const hour = 3_600_000;
/** A logger that ran `hours` from a time written as ISO. */
const span = (start: string, hours: number, known: ClockSpan["known"] = "date"): ClockSpan => ({
  start: Date.parse(`${start}Z`),
  end: Date.parse(`${start}Z`) + hours * hour,
  known,
});
const starts = (...spans: ClockSpan[]) =>
  placeByOverlap(spans).map(({ start }) => new Date(start).toISOString().slice(0, 16));

/** Constructed cases. */
describe("placeByOverlap", () => {
  it("leaves dated spans where they are", () => {
    expect(starts(span("2026-02-14T22:00", 8), span("2026-03-01T20:00", 8))).toEqual([
      "2026-02-14T22:00",
      "2026-03-01T20:00",
    ]);
  });

  it("puts a bare clock on the evening before or the morning after, as it overlaps", () => {
    const night = span("2026-02-14T22:00", 10);
    expect(starts(span("1970-01-01T21:00", 12, "clock"), night)[0]).toBe("2026-02-14T21:00");
    expect(starts(night, span("1970-01-01T01:30", 6, "clock"))[1]).toBe("2026-02-15T01:30");
  });

  it("chooses the day of the longest overlap in a test of several days", () => {
    const longTest = span("2026-02-14T23:00", 26);
    expect(starts(longTest, span("1970-01-01T22:00", 8, "clock"))[1]).toBe("2026-02-14T22:00");
    expect(starts(longTest, span("1970-01-01T18:00", 7, "clock"))[1]).toBe("2026-02-15T18:00");
  });

  it("takes the nearest start where days overlap alike", () => {
    const twoDays = span("2026-02-14T12:00", 60);
    expect(starts(twoDays, span("1970-01-01T13:00", 4, "clock"))[1]).toBe("2026-02-14T13:00");
  });

  it("finds the year of dates without one, over the new year as well", () => {
    const newYear = span("2026-12-31T20:00", 12);
    expect(starts(newYear, span("1970-12-31T20:30", 9, "day and month"))[1]).toBe(
      "2026-12-31T20:30",
    );
    expect(starts(newYear, span("1970-01-01T02:00", 5, "day and month"))[1]).toBe(
      "2027-01-01T02:00",
    );
  });

  it("lets the first stand for all where nobody knows a date", () => {
    expect(
      starts(span("1970-01-01T22:00", 9, "clock"), span("1970-01-01T00:30", 6, "clock")),
    ).toEqual(["1970-01-01T22:00", "1970-01-02T00:30"]);
  });

  it("places loggers in relay alike in whatever order they are given", () => {
    // 20:00 to 22:00 dated; 21:00 to 09:00 meets both others; 08:30 to 10:00 is nearer to the
    // evening's start on the morning before, where nothing links it.
    const evening = span("2026-02-14T20:00", 2);
    const night = span("1970-01-01T21:00", 12, "clock");
    const morning = span("1970-01-01T08:30", 1.5, "clock");
    const [atEvening, atNight, atMorning] = [
      "2026-02-14T20:00",
      "2026-02-14T21:00",
      "2026-02-15T08:30",
    ];
    expect(starts(evening, night, morning)).toEqual([atEvening, atNight, atMorning]);
    expect(starts(evening, morning, night)).toEqual([atEvening, atMorning, atNight]);
    expect(starts(morning, night, evening)).toEqual([atMorning, atNight, atEvening]);
  });

  it("has nothing to place without spans", () => {
    expect(placeByOverlap([])).toEqual([]);
  });
});
