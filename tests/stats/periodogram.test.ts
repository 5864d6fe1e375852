import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { strongestPeriod } from "../../src/stats/periodogram.ts";
import { lew } from "./nist-data.ts";
import { seededNormal, seededUniform } from "./seeded-noise.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { periodogram } from "../reference/values/robust.ts";

describeReferences(periodogram);

describe("strongestPeriod", () => {
  it("leaves the beam's cycle no room to be chance", () => {
    const times = lew.map((_, i) => i + 1);
    const found = strongestPeriod(times, lew, { shortest: 2.2, longest: 50 })!;
    // Share of variance explained by the sine that leaves 134.066401 of the certified 277.332168044316.
    const explained = 1 - (134.066401 ** 2 * 196) / (277.332168044316 ** 2 * 199);
    expect(found.power).toBeCloseTo(explained, 6);
    expect(found.falseAlarmProbability).toBeLessThan(1e-40);
  });

  // Constructed: a swing of 0.4 degC under noise of 0.3, times uneven with a
  // gap. Standard deviation of the frequency by theory (Kovacs 1981):
  // sqrt(6/n) s/(pi T A) = 5e-7 per unit, of the period 37^2 times that; four allowed.
  it("finds a swing in uneven readings", () => {
    const uniform = seededUniform(6);
    const normal = seededNormal(6);
    const times = Float64Array.from({ length: 1500 }, () => 720 * uniform())
      .filter((t) => t < 300 || t > 360)
      .toSorted();
    const values = times.map((t) => 41 + 0.4 * Math.sin((2 * Math.PI * t) / 37) + 0.3 * normal());
    const found = strongestPeriod(times, values, { shortest: 4, longest: 180 })!;
    const frequencyDeviation = (Math.sqrt(6 / times.length) * 0.3) / (Math.PI * 720 * 0.4);
    expect(Math.abs(found.period - 37)).toBeLessThan(4 * 37 ** 2 * frequencyDeviation);
    expect(found.falseAlarmProbability).toBeLessThan(1e-10);
  });

  it("follows the units of time and value", () => {
    const period = fc.double({ min: 6, max: 40, noNaN: true });
    const phase = fc.double({ min: 0, max: 6, noNaN: true });
    fc.assert(
      fc.property(period, phase, fc.integer({ min: 1, max: 3600 }), (length, shift, unit) => {
        const times = Float64Array.from({ length: 400 }, (_, i) => i);
        const values = times.map((t) => Math.sin((2 * Math.PI * t) / length + shift));
        const found = strongestPeriod(
          times.map((t) => t * unit),
          values.map((value) => 1.8 * value + 104),
          { shortest: 3 * unit, longest: 100 * unit },
        )!;
        expect(found.period / unit).toBeCloseTo(length, 2);
      }),
      { numRuns: 40 },
    );
  });

  // Constructed: 1 s readings over a day, period 11 minutes: averaged before the search.
  it("averages close readings without losing the period", () => {
    const normal = seededNormal(9);
    const times = Float64Array.from({ length: 86_400 }, (_, i) => i / 60);
    const values = times.map((t) => Math.sin((2 * Math.PI * t) / 11) + normal());
    const found = strongestPeriod(times, values, { shortest: 2, longest: 240 })!;
    expect(Math.abs(found.period - 11)).toBeLessThan(0.01);
  });

  it("finds none where there is none to find", () => {
    const range = { shortest: 2, longest: 10 };
    expect(strongestPeriod([0, 1, 2], [1, 2, 1], range)).toBeNull();
    const times = Array.from({ length: 50 }, (_, i) => i);
    expect(
      strongestPeriod(
        times,
        times.map(() => 40),
        range,
      ),
    ).toBeNull();
    expect(strongestPeriod(times, times, { shortest: 0, longest: 10 })).toBeNull();
    expect(strongestPeriod(times, times, { shortest: 20, longest: 1 })).toBeNull();
    expect(
      strongestPeriod(
        times.map(() => 3),
        times,
        range,
      ),
    ).toBeNull();
  });
});
