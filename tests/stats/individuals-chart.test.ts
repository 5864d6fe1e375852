import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { individualsChart, individualsLimits } from "../../src/stats/individuals-chart.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { individuals } from "../reference/values/control-charts.ts";

describeReferences(individuals);

// NIST/SEMATECH e-Handbook 6.3.2.2, worked example: flow rates of ten batches.
const flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

describe("individualsChart", () => {
  it("finds nothing in the handbook's example, whose ranges have the mean 16.9 / 9", () => {
    const chart = individualsChart(flow)!;
    // By hand: ranges 2.0 2.3 1.4 3.5 3.4 1.4 0.2 1.2 1.5.
    expect(chart.meanMovingRange).toBeCloseTo(16.9 / 9, 12);
    expect(chart.signals).toEqual(Array(10).fill(false));
    expect(chart.rangeSignals).toEqual(Array(9).fill(false));
  });

  it("signals a value and a step far out of the ordinary (constructed)", () => {
    const values = [...Array.from({ length: 20 }, (_, index) => index % 2), 9];
    const chart = individualsChart(values)!;
    // By hand: ranges 19 of 1 and one of 8, mean 1.35; limits 19/21 -+ 3.5904; ranges up to 4.41.
    expect(chart.meanMovingRange).toBeCloseTo(1.35, 12);
    expect(chart.signals.map(Number)).toEqual([...Array<number>(20).fill(0), 1]);
    expect(chart.rangeSignals.map(Number)).toEqual([...Array<number>(19).fill(0), 1]);
  });

  it("needs two values, of which none can lie outside", () => {
    expect(individualsChart([])).toBeNull();
    expect(individualsChart([41])).toBeNull();
    expect(individualsChart([41, 44])).toMatchObject({
      centre: 42.5,
      meanMovingRange: 3,
      signals: [false, false],
      rangeSignals: [false],
    });
  });

  it("cannot signal any of three values, whatever they are", () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(value, value, value), (values) => {
        expect(individualsChart(values)!.signals).toEqual([false, false, false]);
      }),
    );
  });

  it("stays silent on equal values", () => {
    fc.assert(
      fc.property(fc.double({ min: -100, max: 100, noNaN: true }), (at) => {
        expect(individualsChart(Array<number>(7).fill(at))!.signals).toEqual(Array(7).fill(false));
      }),
    );
  });
});

describe("individualsLimits", () => {
  it("are three deviations around the centre, or as many as asked", () => {
    expect(individualsLimits(40, 0.25)).toEqual({ low: 39.25, high: 40.75 });
    expect(individualsLimits(40, 0.25, 2)).toEqual({ low: 39.5, high: 40.5 });
  });
});
