import { describe, expect, it } from "vitest";
import { fastResidual, spreadFactor } from "../../src/culture/fast-residual.ts";
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

  it("does not take a lone glitch for the top", () => {
    const residuals = Float64Array.from({ length: 400 }, (_, i) =>
      i === 200 ? 5 : Math.sin((2 * Math.PI * i) / 40),
    );
    expect(fastResidual(residuals, evenly(400), holdOf(0), 0.01, 16).top).toBeCloseTo(1, 1);
  });

  it("takes the logger's noise out of the spread", () => {
    const residuals = Float64Array.from({ length: 2000 }, (_, i) => (i % 2 === 0 ? 0.1 : -0.1));
    const { values } = fastResidual(residuals, evenly(2000), holdOf(0.1), 0.1, 16);
    expect(values.at(-1)).toBeCloseTo(0, 6);
  });

  it("takes the spread of a handful of readings about a line with n - 2 degrees of freedom", () => {
    // Eight residuals whose squares sum to 6: standard deviation 1 with 6 degrees of freedom, and the
    // 0.95 quantile of a standard normal is 1.644854.
    const residuals = Float64Array.from([1, -1, 1, -1, 1, -1, 1, -1], (x) => x * Math.sqrt(6 / 8));
    const { values, degreesOfFreedom } = fastResidual(residuals, evenly(8), holdOf(0), 0.1, 10);
    expect(degreesOfFreedom).toBe(6);
    expect(values[9]).toBeCloseTo(1.644854, 6);
    expect(values[0]).toBeCloseTo(-1.644854, 6);
  });

  it("does not believe in a spread finer than the display shows", () => {
    const { values } = fastResidual(new Float64Array(8), evenly(8), holdOf(0), 0.5, 10);
    expect(values[9]).toBeGreaterThan(0.5 / Math.sqrt(12));
  });
});

describe("spreadFactor", () => {
  it("agrees with chi-square tables to the accuracy of Wilson and Hilferty's approximation", () => {
    // Quantiles 0.025 and 0.975 for 10 degrees of freedom: 3.246973 and 20.483177 (NIST/SEMATECH
    // e-Handbook table 1.3.6.7.4, more digits by SciPy and R); the approximation is good to 1 % there.
    expect(spreadFactor(-1.959964, 10) / Math.sqrt(10 / 3.246973)).toBeCloseTo(1, 2);
    expect(spreadFactor(1.959964, 10) / Math.sqrt(10 / 20.483177)).toBeCloseTo(1, 2);
  });

  it("is one where many readings show the spread", () => {
    expect(spreadFactor(1.5, Infinity)).toBe(1);
  });
});
