import { describe, expect, it } from "vitest";
import { offsetCdf } from "../../src/culture/offset-distribution.ts";
import { normalCdf } from "../../src/stats/normal.ts";

/** Probability that y, read with standard uncertainty u, lies in low..high. */
const conformance = (y: number, u: number, low: number, high: number): number => {
  const offset = { halfWidth: 0, standardDeviation: u };
  return offsetCdf(high - y, offset) - offsetCdf(low - y, offset);
};

describe("offsetCdf, normal part alone", () => {
  // JCGM 106:2012: breakdown voltage (7.3.3 example 1, printed 0.92), burst strength (example 2,
  // printed 0.99), oil viscosity (7.4, printed 0.66); inputs from memory, digits recomputed with
  // SciPy and R, 1e-6. The windows in degC are constructed and recomputed the same way.
  it.each([
    [-5.47, 0.05, -Infinity, -5.4, 0.919243],
    [509.7, 8.6, 490, Infinity, 0.98901],
    [13.6, 1.8, 12.5, 16.3, 0.66263],
    [40.2, 0.6, 38, 43, 0.999876],
    [42.4, 0.4, 38, 43, 0.933193],
    [37.5, 0.35, 37, 43, 0.923436],
    [37, 0.5, 36, 38, 0.9545],
    [44.2, 0.3, 40, 44, 0.252493],
  ])("y %d, u %d in %d..%d: %d", (y, u, low, high, expected) => {
    expect(Math.abs(conformance(y, u, low, high) - expected)).toBeLessThan(1e-6);
  });
});

describe("offsetCdf, rectangle and normal", () => {
  it("is a straight line for the rectangle alone", () => {
    const offset = { halfWidth: 0.5, standardDeviation: 0 };
    expect(offsetCdf(-0.6, offset)).toBe(0);
    expect(offsetCdf(-0.25, offset)).toBeCloseTo(0.25, 12);
    expect(offsetCdf(0.6, offset)).toBe(1);
  });

  it("is a step where nothing is uncertain", () => {
    const certain = { halfWidth: 0, standardDeviation: 0 };
    expect([-0.1, 0, 0.1].map((x) => offsetCdf(x, certain))).toEqual([0, 1, 1]);
  });

  it("agrees with the convolution summed by the midpoint rule", () => {
    for (const [a, s] of [
      [0.5, 0.3],
      [1, 0.05],
      [0.1, 2],
    ] as const) {
      for (const x of [-1.2, -0.4, 0, 0.37, 0.9]) {
        const steps = 20_000;
        let sum = 0;
        for (let i = 0; i < steps; i += 1) {
          const shift = -a + ((i + 0.5) * 2 * a) / steps;
          sum += normalCdf((x - shift) / s);
        }
        // The midpoint rule with 20,000 steps is good to about 1e-8 here.
        expect(offsetCdf(x, { halfWidth: a, standardDeviation: s })).toBeCloseTo(sum / steps, 7);
      }
    }
  });
});
