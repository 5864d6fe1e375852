import { describe, expect, it } from "vitest";
import { momentNear, momentOf } from "../../../src/readings/typed/typed-moment.ts";
import { jarLog, logOf, morning, wall } from "./typed-helpers.ts";

const clock = (text: string) => ({
  kind: "clock" as const,
  day: null,
  seconds: wall(`1970-01-01 ${text}`),
});

const begin = (text: string) => momentOf(jarLog(), clock(text), morning);
const near = (old: string, text: string) => momentNear(wall(old), clock(text).seconds);

const night = logOf(["2026-10-03 22:30 41.2"]);

describe("momentOf", () => {
  it("begins on the day said", () => {
    const moment = momentOf(jarLog("2026-09-01"), clock("22:30"), morning);
    expect(moment).toEqual({ ok: true, seconds: wall("2026-09-01 22:30"), doubt: null });
  });

  it("else today, or yesterday where that would still be to come", () => {
    expect(begin("07:30")).toMatchObject({ seconds: wall("2026-10-04 07:30"), doubt: null });
    expect(begin("22:30")).toMatchObject({ seconds: wall("2026-10-03 22:30"), doubt: null });
    // Clocks differ by a few minutes.
    expect(begin("08:05")).toMatchObject({ seconds: wall("2026-10-04 08:05"), doubt: null });
  });

  it.each([
    ["22:31", "2026-10-03 22:31"],
    ["00:10", "2026-10-04 00:10"],
    ["07:00", "2026-10-04 07:00"],
  ])("goes on to the next %s, over midnight by itself", (text, seconds) => {
    expect(momentOf(night, clock(text), morning)).toEqual({
      ok: true,
      seconds: wall(seconds),
      doubt: null,
    });
  });

  it("questions a clock that goes back by a little, also over midnight", () => {
    const back = momentOf(night, clock("22:10"), morning);
    expect(back).toMatchObject({ seconds: wall("2026-10-03 22:10"), doubt: { kind: "time" } });
    expect(back.ok && back.doubt?.why).toBe("20 min before the last reading (22:30)");
    const past = logOf(["2026-10-04 00:10 41.2"]);
    expect(momentOf(past, clock("23:50"), morning)).toMatchObject({
      seconds: wall("2026-10-03 23:50"),
      doubt: { kind: "time" },
    });
  });

  it("asks whether all was a day earlier where a reading is still to come", () => {
    // Typed in the evening: 21:30 was taken for today's.
    const evening = wall("2026-10-04 22:00");
    const log = logOf(["21:30 41.2"], jarLog(), evening);
    expect(log.readings[0]?.seconds).toBe(wall("2026-10-04 21:30"));
    expect(momentOf(log, clock("07:00"), evening)).toMatchObject({ doubt: { kind: "a-day-back" } });
    const dated = logOf(["21:30 41.2"], jarLog("2026-10-04"), evening);
    expect(momentOf(dated, clock("07:00"), evening)).toMatchObject({ doubt: { kind: "time" } });
  });

  it("counts from the last reading, and needs one", () => {
    const later = { kind: "later" as const, seconds: 900 };
    expect(momentOf(night, later, morning)).toMatchObject({ seconds: wall("2026-10-03 22:45") });
    expect(momentOf(jarLog(), later, morning)).toMatchObject({ ok: false });
    expect(momentOf(night, { kind: "now" }, morning)).toMatchObject({ seconds: morning });
  });

  it("questions a date far from the others", () => {
    const day = wall("2026-10-13 00:00") / 86_400;
    const moment = momentOf(night, { ...clock("07:00"), day }, wall("2026-10-20 08:00"));
    expect(moment.ok && moment.doubt?.why).toBe("9 days from the last reading");
  });
});

describe("momentNear", () => {
  it("is the nearest day's", () => {
    expect(near("2026-10-03 23:50", "00:10")).toBe(wall("2026-10-04 00:10"));
    expect(near("2026-10-04 00:10", "23:50")).toBe(wall("2026-10-03 23:50"));
    expect(near("2026-10-03 22:30", "22:45")).toBe(wall("2026-10-03 22:45"));
  });
});
