import { describe, expect, it } from "vitest";
import { evenSeries } from "../../src/hold/even-grid.ts";
import { findSwing } from "../../src/hold/swing.ts";
import { autoregressive, seededNormal } from "../stats/seeded-noise.ts";
import { logged, sawtooth } from "./constructed.ts";

const held = { until: 600, noise: 0.05, resolution: 0.1 };
const swingOf = (course: (minute: number) => number, sampling = held) =>
  findSwing(evenSeries(logged(course, sampling)));

describe("findSwing", () => {
  it.each([
    [5, 0.6, 0.5],
    [12, 0.3, 0.3],
    [25, 1.5, 0.2],
    [60, 5, 0.5],
    [90, 2, 0.7],
  ])("finds a sawtooth of %d min and %d degC, rising for %d of it", (period, height, rise) => {
    const swing = swingOf((m) => 41 + sawtooth(period, height, rise)(m));
    expect(swing).not.toBeNull();
    expect(Math.abs(swing!.periodMinutes / period - 1)).toBeLessThan(0.03);
    // Averaging cuts the corners by some percent, noise (0.05 degC) and rounding (0.1) add to the height.
    expect(Math.abs(swing!.peakToPeak - height)).toBeLessThan(0.1 * height + 0.15);
    expect(Math.abs(swing!.cycles - 600 / period)).toBeLessThanOrEqual(2);
  });

  it("finds none in noise, a drift, or the wave of day and night", () => {
    expect(swingOf(() => 41)).toBeNull();
    expect(swingOf((m) => 41 + m / 300)).toBeNull();
    expect(
      swingOf((m) => 41 + Math.sin((2 * Math.PI * m) / 1440), { ...held, until: 1440 }),
    ).toBeNull();
  });

  it("hardly ever takes red noise for a swing", () => {
    let found = 0;
    for (let seed = 1; seed <= 60; seed += 1) {
      // Correlation time of 30 minutes, 0.3 degC: a room's draughts.
      const wander = autoregressive(601, Math.exp(-1 / 30), seededNormal(seed));
      if (findSwing({ start: 0, step: 1, values: wander.map((v) => 41 + 0.3 * v) })) found += 1;
    }
    expect(found).toBeLessThanOrEqual(2);
  });

  it("is not enlarged by a dip", () => {
    const swing = swingOf((m) => 41 + sawtooth(20, 1)(m) - (m > 300 && m < 306 ? 5 : 0));
    expect(Math.abs(swing!.peakToPeak - 1)).toBeLessThan(0.25);
  });

  it("asks for three cycles", () => {
    expect(swingOf((m) => 41 + sawtooth(60, 2)(m), { ...held, until: 150 })).toBeNull();
  });
});
