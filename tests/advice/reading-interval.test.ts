import { describe, expect, it } from "vitest";
import { readingInterval } from "../../src/advice/reading-interval.ts";
import type { Hold } from "../../src/hold/hold.ts";
import { settledTest } from "./constructed.ts";

// Constructed holds. The intervals themselves are this project's choice; what is
// checked is what they are for: cycles resolved, no step with them, readings enough.
const calm = settledTest({ level: 38 }).settled.evidence.hold;
const swinging = (periodMinutes: number, more: Partial<Hold> = {}): Hold => ({
  ...calm,
  swing: { periodMinutes, peakToPeak: 1, cycles: 12 },
  ...more,
});
const night = 10;
const byHand = [30, 35, 40, 45, 50, 55, 60];

/** Part of a swing by which two readings by hand are apart, from the nearest whole number of swings. */
const outOfStep = (minutes: number, period: number): number => {
  const cycles = minutes / period;
  return Math.round(cycles) === 0 ? 0.5 : Math.abs(cycles - Math.round(cycles));
};

describe("readingInterval of a logger", () => {
  it.each([
    [6, 0.5],
    [30, 2],
    [90, 5],
  ])("reads a swing of %s min every %s min", (period, minutes) => {
    const found = readingInterval(swinging(period), night);
    expect(found).toMatchObject({ loggerMinutes: minutes, swingMinutes: period });
    // Twelve readings a cycle show an extreme to 1 - cos(pi / 12), 3 % of the amplitude.
    expect(period / found.loggerMinutes).toBeGreaterThanOrEqual(12);
  });

  it("reads every minute where no swing is known", () => {
    expect(readingInterval(calm, night)).toMatchObject({ loggerMinutes: 1, swingMinutes: null });
    expect(readingInterval(null, night)).toMatchObject({ loggerMinutes: 1, swingMinutes: null });
  });

  it("goes no quicker than half a minute, whatever swings", () => {
    expect(readingInterval(swinging(2), night).loggerMinutes).toBe(0.5);
  });
});

describe("readingInterval by hand", () => {
  it("takes readings that still tell something new", () => {
    // 600 minutes of 20 independent readings: one in 30.
    const thirty = { ...calm, hours: 10, effectiveReadings: 20 };
    expect(readingInterval(thirty, night).byHandMinutes).toBe(30);
    expect(readingInterval(null, night).byHandMinutes).toBe(45);
  });

  it.each([
    [1000, 30],
    [1, 60],
  ])("keeps to what a person does with %s independent readings", (effectiveReadings, minutes) => {
    const hold = { ...calm, hours: 10, effectiveReadings };
    expect(readingInterval(hold, night).byHandMinutes).toBe(minutes);
  });

  it("gives eight readings or more, where a person reads so often", () => {
    const slow = { ...calm, hours: 10, effectiveReadings: 1 };
    for (let hours = 4; hours <= 48; hours += 0.25) {
      const { byHandMinutes } = readingInterval(slow, hours);
      expect((hours * 60) / byHandMinutes).toBeGreaterThanOrEqual(8);
    }
    expect(readingInterval(slow, 1).byHandMinutes).toBe(30);
  });

  it("does not mind many readings within one slow swing", () => {
    const slow = swinging(240, { hours: 10, effectiveReadings: 20 });
    expect(readingInterval(slow, night).byHandMinutes).toBe(30);
  });

  it("never falls into step with the swing, where there is a choice", () => {
    let [changed, without] = [0, 0];
    for (const hours of [3, 6, 10, 36]) {
      for (let period = 10; period <= 240; period += 0.5) {
        for (const effectiveReadings of [1, 14, 17, 24, 60]) {
          const hold = swinging(period, { hours: 10, effectiveReadings });
          const { byHandMinutes } = readingInterval(hold, hours);
          const most = Math.max(30, Math.min(60, (hours * 60) / 8));
          const choice = byHand.some((one) => one <= most && outOfStep(one, period) >= 0.15);
          expect(byHand.filter((one) => one <= most)).toContain(byHandMinutes);
          if (choice) expect(outOfStep(byHandMinutes, period)).toBeGreaterThanOrEqual(0.15);
          else without += 1;
          const plain = readingInterval({ ...hold, swing: null }, hours).byHandMinutes;
          if (plain !== byHandMinutes) changed += 1;
        }
      }
    }
    expect(changed).toBeGreaterThan(200);
    // Only a three hours' test, of which 30 minutes are all a person can do.
    expect(without).toBeGreaterThan(0);
  });
});
