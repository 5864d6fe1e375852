import { describe, expect, it } from "vitest";
import { dropReading, emptyLog, fixReading } from "../../../src/readings/typed/typed-log.ts";
import { jarLog, logOf, morning, placedIn, sentenceOf, shown } from "./typed-helpers.ts";

const night = logOf(["21:30 20.1", "22:30 38.4", "23:50 41.2", "0:40 41.1", "7:00 41.0"]);
const clock = (hour: number, minute: number) => ({
  kind: "clock" as const,
  day: null,
  seconds: hour * 3600 + minute * 60,
});
const value = (digits: string) => [{ digits, unit: null }];

describe("addReading", () => {
  it("takes a night over midnight, begun yesterday", () => {
    expect(shown(night)).toEqual([
      "2026-10-03 21:30 20.1",
      "2026-10-03 22:30 38.4",
      "2026-10-03 23:50 41.2",
      "2026-10-04 00:40 41.1",
      "2026-10-04 07:00 41.0",
    ]);
  });

  it("keeps readings in order of time, wherever they were forgotten", () => {
    const late = logOf(["2026-10-03 23:10 41.0"], night);
    expect(shown(late)[2]).toBe("2026-10-03 23:10 41.0");
    const placed = placedIn(night, "2026-10-03 23:10 41.0");
    expect(placed).toMatchObject({ kind: "placed", number: 3, doubts: [] });
  });

  it("refuses a second reading at one time and says how to correct the first", () => {
    const placed = placedIn(night, "2026-10-03 22:30 39");
    expect(placed.kind).toBe("refused");
    expect(sentenceOf(placed)).toContain("fix 2 22:30");
  });

  it("questions leaps from the reading before in time", () => {
    expect(sentenceOf(placedIn(night, "7:30 12.0"))).toContain(
      "29 degC from the reading before (41)",
    );
    expect(sentenceOf(placedIn(night, "7:30 412"))).toContain("Did you mean 41.2?");
    expect(sentenceOf(placedIn(night, "7:30 40.8"))).toBe("");
  });

  it("compares each probe with itself, over readings it missed", () => {
    const log = emptyLog(["Jar", "Kitchen"], "degC", null, false);
    const two = logOf(["22:00 41.2 19.5", "23:00 41.1 -"], log);
    expect(sentenceOf(placedIn(two, "0:10 41.0 62"))).toContain("the reading before (19.5)");
  });

  it("moves all readings a day back when one is still to come and no date was said", () => {
    const evening = logOf(["21:30 41.2"], jarLog(), morning + 14 * 3600);
    const placed = placedIn(evening, "7:00 41.0", morning + 14 * 3600);
    expect(placed.kind === "placed" && placed.doubts.map(({ kind }) => kind)).toEqual([
      "a-day-back",
    ]);
    expect(placed.kind === "placed" && shown(placed.log)).toEqual([
      "2026-10-03 21:30 41.2",
      "2026-10-04 07:00 41.0",
    ]);
  });

  it("writes another unit's readings in the log's", () => {
    expect(shown(logOf(["22:30 41.2", "23:00 105.8F"]))[1]).toBe("2026-10-03 23:00 41.00");
  });

  it("lets the first reading's letter decide where no unit was said", () => {
    const open = emptyLog(["Jar"], "degC", null, true);
    expect(logOf(["22:30 105.8F", "23:00 106"], open)).toMatchObject({ unit: "degF" });
    const [, second] = shown(logOf(["22:30 105.8F", "23:00 106"], open));
    expect(second).toBe("2026-10-03 23:00 106");
    expect(logOf(["22:30 41", "23:00 106F"], open)).toMatchObject({ unit: "degC" });
  });

  it("changes nothing in place", () => {
    const before = JSON.stringify(night);
    logOf(["7:30 41.0"], night);
    dropReading(night, 1);
    expect(JSON.stringify(night)).toBe(before);
  });
});

describe("fixReading", () => {
  it("changes the time, the value or both; the day is the nearest", () => {
    const fixed = (
      number: number,
      time: ReturnType<typeof clock> | null,
      digits: string | null,
    ) => {
      const values = digits === null ? null : value(digits);
      const placed = fixReading(night, number, { time, values, comment: null }, morning);
      return placed.kind === "placed" ? shown(placed.log) : sentenceOf(placed);
    };
    expect(fixed(3, clock(23, 45), "41.0")[2]).toBe("2026-10-03 23:45 41.0");
    expect(fixed(3, null, "40.9")[2]).toBe("2026-10-03 23:50 40.9");
    expect(fixed(3, clock(0, 5), null)[2]).toBe("2026-10-04 00:05 41.2");
    expect(fixed(4, clock(23, 55), null)[3]).toBe("2026-10-03 23:55 41.1");
    expect(fixed(1, clock(22, 50), null)[1]).toBe("2026-10-03 22:50 20.1");
    expect(fixed(9, null, "41")).toContain("a number from 1 to 5");
    expect(fixed(3, clock(22, 30), "41")).toContain("a time that has no reading yet");
  });

  it("counts a later time from the reading before", () => {
    const change = { time: { kind: "later" as const, seconds: 900 }, values: null, comment: null };
    const placed = fixReading(night, 3, change, morning);
    expect(placed.kind === "placed" && shown(placed.log)[2]).toBe("2026-10-03 22:45 41.2");
  });
});

describe("dropReading", () => {
  it("takes one out, and says where there is none", () => {
    const placed = dropReading(night, 2);
    expect(placed.kind === "placed" && placed.log.readings.length).toBe(4);
    expect(sentenceOf(dropReading(jarLog(), 1))).toContain("a reading to change");
  });
});
