import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readTypedTime } from "../../../src/readings/typed/typed-time.ts";

const day = (date: string): number => Date.parse(`${date}T00:00Z`) / 86_400_000;
const clock = (hour: number, minute: number, second = 0, on: number | null = null) => ({
  kind: "clock",
  day: on,
  seconds: hour * 3600 + minute * 60 + second,
});
const minutes = (count: number) => ({ kind: "later", seconds: count * 60 });

describe("readTypedTime", () => {
  // 12-hour clock: 12 am is midnight and 12 pm noon, as common use has it (NIST, Times of Day FAQ; from memory).
  it.each([
    ["22:30 41.2", clock(22, 30), "41.2"],
    ["9:05 41", clock(9, 5), "41"],
    ["22:30:15 41.2", clock(22, 30, 15), "41.2"],
    ["22h30 41.2", clock(22, 30), "41.2"],
    ["22h 41.2", clock(22, 0), "41.2"],
    ["10:30 pm 105.8F", clock(22, 30), "105.8F"],
    ["10:30pm 41", clock(22, 30), "41"],
    ["10:30 P.M. 41", clock(22, 30), "41"],
    ["10 pm 41", clock(22, 0), "41"],
    ["12:10 am 41", clock(0, 10), "41"],
    ["12:10 pm 41", clock(12, 10), "41"],
    ["0:00 41", clock(0, 0), "41"],
    ["2026-10-03 22:30 41.2", clock(22, 30, 0, day("2026-10-03")), "41.2"],
    ["2026-10-03T22:30 41.2", clock(22, 30, 0, day("2026-10-03")), "41.2"],
    ["2024-2-29 7:00 41.2", clock(7, 0, 0, day("2024-02-29")), "41.2"],
    ["now 41.2", { kind: "now" }, "41.2"],
    ["NOW", { kind: "now" }, ""],
    ["+15 41.2", minutes(15), "41.2"],
    ["+ 15 min 41.2", minutes(15), "41.2"],
    ["+15m 41", minutes(15), "41"],
    ["+1h 40.9", minutes(60), "40.9"],
    ["+1h 41", minutes(60), "41"],
    ["+1h30 41", minutes(90), "41"],
    ["+1:30 41", minutes(90), "41"],
    ["+1.5h 41", minutes(90), "41"],
    ["+1,5 h 41", minutes(90), "41"],
  ])("%s", (typed, time, rest) => {
    expect(readTypedTime(typed)).toEqual({ ok: true, time, rest });
  });

  it.each([
    ["22.30 41.2", "Write 22:30."],
    ["22,30 41.2", "Write 22:30."],
    ["10.30 pm 41.2", "Write 10:30 pm."],
    ["2230 41.2", "write 22:30."],
    ["41.2", "22:30 41.2, or now 41.2"],
    ["105.8 F", "now 105.8 F"],
    ["24:00 41", "0:00"],
    ["25:00 41", "22:30"],
    ["22:75 41", "22:30"],
    ["13:00 pm 41", "22:30"],
    ["3.10.2026 22:30 41", "2026-10-03"],
    ["10/3/2026 22:30 41", "2026-10-03"],
    ["2026-02-30 22:30 41", "2026-10-03"],
    ["2026-10-03", "22:30"],
    ["+15 days 41", "+15"],
    ["+ 41.2.3", "+15"],
    ["+0 41", "+15"],
    ["at ten 41", "22:30 41.2"],
    ["", "22:30 41.2"],
  ])("%s is refused with advice that holds %s", (typed, advice) => {
    const found = readTypedTime(typed);
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.advice).toContain(advice);
  });

  it("gives a moment of the day or a refusal, never NaN, whatever is typed", () => {
    const signs = fc.constantFrom(..."0123456789:.,h+-TpamFC now ");
    fc.assert(
      fc.property(fc.string({ unit: signs, maxLength: 24 }), (typed) => {
        const found = readTypedTime(typed);
        if (!found.ok || found.time.kind === "now") return;
        const most = found.time.kind === "clock" ? 86_399 : Number.MAX_SAFE_INTEGER;
        expect(Number.isInteger(found.time.seconds)).toBe(true);
        expect(found.time.seconds).toBeGreaterThanOrEqual(0);
        expect(found.time.seconds).toBeLessThanOrEqual(most);
      }),
      { numRuns: 3000 },
    );
  });
});
