import { describe, expect, it } from "vitest";
import { heldEvidence } from "../../src/culture/hold-plays.ts";
import { acceptableOffsets } from "../../src/culture/acceptance.ts";
import { readNight } from "../../src/hold/night.ts";
import { shiftedEvidence, shiftedPlays } from "../../src/culture/shifted-hold.ts";
import { evidenceOf, nightSeries, swinging } from "./nights.ts";

const series = nightSeries({ hoursHeld: 12, hold: swinging(40, 0.3, 25) });
const base = evidenceOf({ hoursHeld: 12, hold: swinging(40, 0.3, 25) });
/** The same night read by a thermometer that shows `by` more. */
const at = (by: number) => {
  const celsius = series.celsius.map((value) => value + by);
  return heldEvidence({ ...base, night: readNight({ ...series, celsius }, { share: 0.95 }) })!;
};

describe("shiftedEvidence", () => {
  it("is what the moved readings would have given", () => {
    const moved = shiftedEvidence(at(0), -1.25);
    const read = at(-1.25);
    for (const figure of ["mean", "median", "min", "max", "standardDeviation"] as const) {
      expect(moved.hold[figure]).toBeCloseTo(read.hold[figure], 9);
    }
    expect(moved.hold.band.high).toBeCloseTo(read.hold.band.high, 9);
    expect(moved.hold.hourMeans.low).toBeCloseTo(read.hold.hourMeans.low, 9);
    expect(moved.night.peak!).toBeCloseTo(read.night.peak!, 9);
    expect(moved.night.hold).toBe(moved.hold);
    expect(moved.night.holdReadings).toBe(moved.readings);
    expect(moved.readings.celsius[100]).toBeCloseTo(read.readings.celsius[100]!, 9);
  });

  it("leaves the very same night where there is nothing to move", () => {
    const evidence = at(0);
    expect(shiftedEvidence(evidence, 0)).toBe(evidence);
  });
});

describe("shiftedPlays", () => {
  it("gives the offsets that moved temperatures would give", () => {
    const values = Float64Array.of(38, 38.5, 39, 39.5);
    const acceptance = { low: 37, high: 40, share: 0.75, ceiling: 41 };
    const playAt = (by: number) => ({
      intervals: acceptableOffsets(
        values.map((value) => value + by),
        39.8 + by,
        acceptance,
      ),
      belowCeiling: acceptance.ceiling - (39.8 + by),
    });
    const [moved] = shiftedPlays([playAt(0)], 0.75);
    const direct = playAt(0.75);
    expect(moved!.belowCeiling).toBeCloseTo(direct.belowCeiling, 12);
    expect(moved!.intervals).toHaveLength(direct.intervals.length);
    for (const [index, { from, to }] of direct.intervals.entries()) {
      expect(moved!.intervals[index]!.from).toBeCloseTo(from, 12);
      expect(moved!.intervals[index]!.to).toBeCloseTo(to, 12);
    }
  });
});
