import { describe, expect, it } from "vitest";
import { recheckChart } from "../../src/advice/recheck-chart.ts";
import type { HeldTest } from "../../src/advice/response.ts";
import { ewma } from "../../src/stats/ewma.ts";

const tests = (levels: readonly number[]): readonly HeldTest[] =>
  levels.map((level, at) => ({ id: `${at}`, settled: { level } }) as HeldTest);

/** Constructed levels. */
describe("recheckChart", () => {
  it("centres on the first half of the tests and signals a newest one beyond three deviations", () => {
    const chart = recheckChart(tests([38, 38.2, 38.1, 39]), 0.2, true);
    expect(chart).toMatchObject({ deviation: 0.2, from: "measured" });
    expect(chart.centre).toBeCloseTo(38.1, 12);
    expect(chart.low).toBeCloseTo(37.5, 12);
    expect(chart.high).toBeCloseTo(38.7, 12);
    expect(chart.points.map(({ individualSignal }) => individualSignal)).toEqual([
      false,
      false,
      false,
      true,
    ]);
  });

  it("sees a small lasting shift by the average before any single test stands out", () => {
    const chart = recheckChart(tests([38, 38, 38, 38.35, 38.4, 38.45, 38.4]), 0.18, true);
    expect(chart.points.some(({ individualSignal }) => individualSignal)).toBe(false);
    expect(chart.points.at(-1)!.ewmaSignal).toBe(true);
    const own = ewma([38, 38, 38, 38.35, 38.4, 38.45, 38.4], {
      centre: chart.centre,
      deviation: 0.18,
    });
    expect(chart.points.map((point) => point.ewma)).toEqual(own.map(({ value }) => value));
  });

  it("takes the deviation from moving ranges once there are enough of them", () => {
    const levels = [38, 38.2, 38, 38.2, 38, 38.2, 38, 38.2, 38, 38.1];
    const chart = recheckChart(tests(levels), 0.6, false);
    // NIST/SEMATECH e-Handbook 6.3.2.2: the mean moving range, 0.2 for all but the newest, by 1.128.
    expect(chart.deviation).toBeCloseTo(0.2 / 1.128, 9);
    expect(chart.from).toBe("measured");
    expect(recheckChart(tests([38, 38.1]), 0.18, false)).toMatchObject({
      deviation: 0.18,
      from: "assumed",
    });
  });
});
