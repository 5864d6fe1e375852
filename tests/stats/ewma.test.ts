import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ewma } from "../../src/stats/ewma.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { ewmaChart } from "../reference/values/control-charts.ts";

describeReferences(ewmaChart);

// NIST/SEMATECH e-Handbook 6.3.2.4, worked example: lambda 0.3, start 50, s 2.0539, three deviations.
const setting = { centre: 50, deviation: 2.0539, lambda: 0.3, width: 3 };
// prettier-ignore
const data = [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
  49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

describe("ewma", () => {
  it("finds none of the handbook's series outside", () => {
    const points = ewma(data, setting);
    expect(points.some(({ signal }) => signal)).toBe(false);
  });

  it("has its limits alike on both sides", () => {
    for (const { low, high } of ewma(data, setting)) expect(low).toBeCloseTo(100 - high, 9);
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
