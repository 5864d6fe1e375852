import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spreadStamps } from "../../../src/readings/times/spread-stamps.ts";
import { read, setAsideTotal } from "../reading-helpers.ts";

const spread = (seconds: readonly number[]) => {
  const column = Float64Array.from(seconds);
  const notices = spreadStamps(column);
  return { seconds: [...column], codes: notices.map(({ code }) => code) };
};
const printed = (count: number, step: number, from: number, grain: number): number[] =>
  Array.from({ length: count }, (_, at) => Math.floor((from + at * step) / grain) * grain);

describe("spreadStamps", () => {
  it("gives a regular log its own times back, to within one step", () => {
    const log = fc.record({
      step: fc.constantFrom(5, 10, 12, 13, 15, 20, 30),
      from: fc.integer({ min: 0, max: 59 }),
      count: fc.integer({ min: 60, max: 400 }),
    });
    fc.assert(
      fc.property(log, ({ step, from, count }) => {
        const found = spread(printed(count, step, from, 60)).seconds;
        expect(found).toHaveLength(count);
        for (const [at, second] of found.entries()) {
          // The last minute may be cut short anywhere: nothing shows where in it its readings stand.
          const isLast = second >= Math.floor((from + (count - 1) * step) / 60) * 60;
          const off = Math.abs(second - (from + at * step));
          expect(off).toBeLessThanOrEqual(isLast ? 2 * step : step);
          if (at > 0) expect(second).toBeGreaterThan(found[at - 1]!);
        }
      }),
    );
  });

  it("spreads several readings in each second", () => {
    expect(spread(printed(40, 0.25, 0, 1))).toEqual({
      seconds: Array.from({ length: 40 }, (_, at) => at / 4),
      codes: ["stamps-spread"],
    });
  });

  it.each([
    ["one reading in each minute, some twice", [0, 60, 60, 120, 180, 240, 300, 300, 360, 420]],
    ["rows written twice, five minutes apart", [0, 0, 300, 300, 600, 600, 900, 900, 1200, 1200]],
    ["no regular count", [0, 0, 0, 0, 60, 120, 180, 180, 180, 180, 180, 240, 300]],
    ["parts of a second", [0.5, 0.5, 1.7, 1.7, 2.9, 2.9, 4.4, 4.4, 5.1, 5.1]],
    ["two stamps", [0, 0, 60, 60]],
    ["none", []],
  ])("leaves alone: %s", (_, seconds) => {
    expect(spread(seconds)).toEqual({ seconds, codes: [] });
  });
});

/** Made by hand: what a logger prints that measures every 10 s and shows minutes. */
const stamp = (seconds: number): string =>
  new Date(Date.UTC(2026, 2, 28, 22) + seconds * 1000).toISOString().slice(0, 16).replace("T", " ");

/** 28 to 29 March 2026: from 2:00 the clock of Central Europe shows 3:00. */
const local = (seconds: number): string => stamp(seconds >= 4 * 3600 ? seconds + 3600 : seconds);

describe("a log of 10 s with stamps to the minute", () => {
  it("loses no reading", async () => {
    const rows = Array.from(
      { length: 300 },
      (_, at) => `${stamp(17 + 10 * at)},${38 + (at % 7) / 10}`,
    );
    const file = await read(["time,temp C", ...rows].join("\n"));
    expect(file).toMatchObject({ rowsRead: 300, rowsUsed: 300, intervalSeconds: 10 });
    expect(setAsideTotal(file)).toBe(0);
    // Four readings share the first minute: they are its last ones.
    expect(file.startWallClock).toBe(Date.UTC(2026, 2, 28, 22, 0, 10));
    expect(file.notices).toContainEqual({
      code: "stamps-spread",
      facts: { perStamp: 6, seconds: 10 },
    });
  });

  it("still takes out the hour of summer time", async () => {
    const rows = Array.from({ length: 2000 }, (_, at) => `${local(10 * at)},${38 + (at % 7) / 10}`);
    const file = await read(["time,temp C", ...rows].join("\n"));
    expect(file.rowsUsed).toBe(2000);
    expect(file.probes[0]!.minutes[1999]).toBeCloseTo(1999 / 6, 6);
    expect(file.notices.map(({ code }) => code)).toEqual(["clock-jump-mended", "stamps-spread"]);
  });
});
