import { describe, expect, it } from "vitest";
import type { Trace } from "../simulator/run.ts";
import { centralBand, figuresOver, meanOf, rangeOf, stretch, trueDrift } from "./hold-truth.ts";

/** Constructed: 40 degC at zero, rising by 0.3 degC per hour, but far off in its third hour. */
const food = Float64Array.from({ length: 1801 }, (_, at) =>
  at >= 720 && at < 1080 ? 0 : 40 + (0.3 * at) / 360,
);
const trace: Trace = {
  fromSeconds: -600,
  stepSeconds: 10,
  food,
  bath: food,
  room: food,
  power: food,
};
const hold = (from: number, to: number) =>
  ({ kind: "hold", fromSeconds: from, toSeconds: to }) as const;

describe("trueDrift", () => {
  it("is the slope of what is hold, across what is not", () => {
    const phases = [hold(0, 6600), hold(10_200, 17_400)];
    expect(trueDrift(trace, phases, 0, 17_400)).toBeCloseTo(0.3, 9);
    expect(trueDrift(trace, phases, 3600, 5400)).toBeCloseTo(0.3, 9);
  });

  it("says nothing of less than half an hour", () => {
    expect(trueDrift(trace, [hold(0, 1000)], 0, 17_400)).toBeNull();
  });
});

describe("figuresOver", () => {
  it("takes stretches together and leaves out what lies between", () => {
    // Two hours from 40.0 and two from 40.9: means 40.3 and 41.2.
    const found = figuresOver(trace, [
      [-600, 6600],
      [10_200, 17_400],
    ]);
    expect(found!.mean).toBeCloseTo(40.75, 2);
    expect(found!.band.low).toBeGreaterThan(40);
    expect(figuresOver(trace, [])).toBeNull();
  });
});

describe("figures of a stretch", () => {
  it("are those of its values", () => {
    const hour = stretch(trace, food, -600, 3000);
    expect(hour.length).toBe(360);
    expect(rangeOf(hour)).toEqual({ low: 40, high: food[359] });
    expect(meanOf(hour)).toBeCloseTo(40.15, 3);
    // Central 95 % of a straight line's values: 2.5 % of its rise from either end; a step is 0.0008.
    expect(centralBand(hour).low).toBeCloseTo(40 + 0.025 * 0.3, 2);
    expect(centralBand(hour).high).toBeCloseTo(40 + 0.975 * 0.3, 2);
  });
});
