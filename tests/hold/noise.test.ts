import { describe, expect, it } from "vitest";
import { readingNoise } from "../../src/hold/noise.ts";
import { logged } from "./constructed.ts";

const driftAndSwing = (m: number): number => 40 + 0.002 * m + Math.sin(m / 30);

describe("readingNoise", () => {
  it("recovers the standard deviation under a steady drift and a slow swing", () => {
    const { celsius } = logged(driftAndSwing, { until: 5000, noise: 0.1, resolution: 0.001 });
    // 5,000 second differences: standard error about 1.5 %; four of them.
    expect(Math.abs(readingNoise(celsius) / 0.1 - 1)).toBeLessThan(0.06);
  });

  it("does not vanish where rounding is coarser than the noise", () => {
    const { celsius } = logged(() => 40.02, { until: 5000, noise: 0.04, resolution: 0.1 });
    expect(readingNoise(celsius)).toBeGreaterThan(0.01);
  });

  it("leaves out rare corners", () => {
    const { celsius } = logged((m) => (m % 100 === 0 ? 45 : 40), { until: 2000, noise: 0.05 });
    expect(readingNoise(celsius)).toBeLessThan(0.1);
  });

  it("is zero for a straight line and for fewer than three readings", () => {
    expect(readingNoise(Float64Array.of(1, 2, 3, 4))).toBe(0);
    expect(readingNoise(Float64Array.of(1, 9))).toBe(0);
  });
});
