import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ewma, ewmaLimits } from "../../src/stats/ewma.ts";

// NIST/SEMATECH e-Handbook 6.3.2.4, worked example: lambda 0.3, start 50, s 2.0539, three deviations.
const setting = { centre: 50, deviation: 2.0539, lambda: 0.3, width: 3 };
// prettier-ignore
const data = [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
  49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
// prettier-ignore
const printed = ["50.60", "49.52", "50.56", "50.18", "50.16", "49.21", "49.75", "49.85", "50.26",
  "50.33", "50.11", "49.36", "49.52", "50.05", "49.38", "49.92", "50.73", "51.23", "51.94", "51.99"];
// The same in decimal arithmetic of 40 digits (Python's decimal).
// prettier-ignore
const recomputed = [50.6, 49.52, 50.564, 50.1848, 50.15936, 49.211552, 49.7480864, 49.85366048,
  50.257562336, 50.3302936352, 50.1112055446, 49.3578438812, 49.5204907169, 50.0543435018,
  49.3780404513, 49.9246283159, 50.7272398211, 51.2290678748, 51.9403475123, 51.9882432586];

describe("ewma", () => {
  it("prints the handbook's series, none of it outside", () => {
    const points = ewma(data, setting);
    expect(points.map(({ value }) => value.toFixed(2))).toEqual(printed);
    expect(points.some(({ signal }) => signal)).toBe(false);
  });

  it("repeats it in decimal arithmetic", () => {
    // Half of the tenth decimal.
    ewma(data, setting).forEach(({ value }, index) =>
      expect(Math.abs(value - recomputed[index]!)).toBeLessThanOrEqual(5.1e-11),
    );
  });

  // Decimal arithmetic as above; the handbook gives the settled limits only.
  it.each([
    [1, 51.84851],
    [2, 52.2563940121],
    [3, 52.4314055708],
    [5, 52.5516114601],
    [10, 52.5873988479],
    [20, 52.5884309141],
  ])("has widened its limits by value %i to %f", (count, high) => {
    const point = ewma(data, setting)[count - 1]!;
    expect(point.high).toBeCloseTo(high, 9);
    expect(point.low).toBeCloseTo(100 - high, 9);
  });

  it("takes 0.3 and three deviations where nothing is said", () => {
    expect(ewma(data, { centre: 50, deviation: 2.0539 })).toEqual(ewma(data, setting));
  });

  it("signals a lasting shift of one deviation that no single value shows (constructed)", () => {
    const points = ewma(Array<number>(30).fill(1.4), { centre: 0, deviation: 1 });
    // 1.4 (1 - 0.7^t) against 1.2603 sqrt(1 - 0.7^2t): by hand, 1.0640 < 1.1973 at 4, 1.3506 > 1.2595 at 10.
    expect(points[3]!.signal).toBe(false);
    expect(points[9]!.signal).toBe(true);
  });

  it("is the values themselves with all weight on the newest", () => {
    const points = ewma([1, -4, 2], { centre: 0, deviation: 1, lambda: 1 });
    expect(points.map(({ value }) => value)).toEqual([1, -4, 2]);
    expect(points.map(({ signal }) => signal)).toEqual([false, true, false]);
    expect(points.map(({ high }) => high)).toEqual([3, 3, 3]);
  });

  it("stays silent on values that never leave the centre, even without any deviation", () => {
    const centre = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(centre, (at) => {
        const points = ewma(Array<number>(9).fill(at), { centre: at, deviation: 0 });
        expect(points.every(({ signal }) => !signal)).toBe(true);
      }),
    );
  });

  it("gives no points for no values", () => {
    expect(ewma([], setting)).toEqual([]);
  });
});

describe("ewmaLimits", () => {
  it("prints the handbook's limits, which round the factor to 0.4201", () => {
    const { low, high } = ewmaLimits(setting);
    expect(Math.abs(high - 52.5884)).toBeLessThanOrEqual(5e-5);
    // Printed 47.4115; the rounded factor moves it by 6e-5.
    expect(Math.abs(low - 47.4115)).toBeLessThanOrEqual(1e-4);
    // Unrounded, decimal arithmetic.
    expect(high).toBeCloseTo(52.588431738127, 11);
    expect(low).toBeCloseTo(47.411568261873, 11);
  });
});
