import { describe, expect, it } from "vitest";
import { fastResidual } from "../../src/culture/fast-residual.ts";
import type { Hold, HoldReadings } from "../../src/hold/hold.ts";

const holdOf = (noise: number): Hold => ({
  fromMinute: 0,
  toMinute: 600,
  hours: 10,
  mean: 40,
  median: 40,
  min: 39,
  max: 41,
  standardDeviation: 0.7,
  band: { low: 39, high: 41 },
  effectiveReadings: 10,
  readings: 600,
  meanUncertainty: 0.01,
  drift: { perHour: 0, low: -0.01, high: 0.01, standardUncertainty: 0.005, robustPerHour: 0 },
  swing: null,
  noise,
  hourMeans: { low: 40, high: 40 },
});
const evenly = (count: number): HoldReadings => ({
  minutes: Float64Array.from({ length: count }, (_, i) => i),
  celsius: new Float64Array(count),
  weights: new Float64Array(count).fill(1),
});

describe("fastResidual", () => {
  it("keeps the quantiles of a sine (arcsine law) when the logger is quiet", () => {
    const residuals = Float64Array.from({ length: 2000 }, (_, i) =>
      Math.sin((2 * Math.PI * i) / 40),
    );
    const { values } = fastResidual(residuals, evenly(2000), holdOf(0), 0.1, 16);
    values.forEach((value, i) => {
      // Quantile p of the arcsine law is sin(pi (p - 1/2)); 40 samples a cycle, so 0.1 at the steepest.
      expect(Math.abs(value - Math.sin(Math.PI * ((i + 0.5) / 16 - 0.5)))).toBeLessThan(0.1);
    });
  });

  it("takes the logger's noise out of the spread", () => {
    const residuals = Float64Array.from({ length: 2000 }, (_, i) => (i % 2 === 0 ? 0.1 : -0.1));
    expect(fastResidual(residuals, evenly(2000), holdOf(0.1), 0.1, 16).top).toBeCloseTo(0, 6);
  });

  it("widens a handful of readings as the prediction interval does", () => {
    // Eight residuals with standard deviation 1 about a fitted line (6 degrees of freedom):
    // the 0.95 quantile of the next is t(0.95; 6) sqrt(1 + 1/8) = 1.943180 x 1.060660 = 2.061060
    // (t from the NIST/SEMATECH e-Handbook table, 1.943).
    const residuals = Float64Array.from([1, -1, 1, -1, 1, -1, 1, -1], (x) => x * Math.sqrt(6 / 8));
    const { values } = fastResidual(residuals, evenly(8), holdOf(0), 0.1, 10);
    expect(values[9]).toBeCloseTo(2.06106, 3);
    expect(values[0]).toBeCloseTo(-2.06106, 3);
  });

  it("does not believe in a spread finer than the display shows", () => {
    const { values } = fastResidual(new Float64Array(8), evenly(8), holdOf(0), 0.5, 10);
    expect(values[9]).toBeGreaterThan(0.5 / Math.sqrt(12));
  });
});
