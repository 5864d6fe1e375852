import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitCurve } from "../../src/stats/curve-fit.ts";
import { fitLine } from "../../src/stats/line-fit.ts";
import { mgh17 } from "./nist-data.ts";
import { seededNormal } from "./seeded-noise.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { certifiedFits, nonlinear } from "../reference/values/nonlinear.ts";

describeReferences(nonlinear);

type Model = (parameters: readonly number[], x: number) => number;

const twoExponentials: Model = ([b1, b2, b3, b4, b5], x) =>
  b1! + b2! * Math.exp(-x * b4!) + b3! * Math.exp(-x * b5!);
const warmUp: Model = ([end, rise, tau], t) => end! - rise! * Math.exp(-t / tau!);
const straight: Model = ([a, b], x) => a! + b! * x;
const root: Model = ([a], x) => Math.sqrt(a! * x);
const twice: Model = ([a, b], x) => (a! + b!) * x;

describe("fitCurve on NIST StRD", () => {
  it.each(certifiedFits)("$name converges", ({ fit, degreesOfFreedom }) => {
    expect(fit.converged).toBe(true);
    expect(fit.degreesOfFreedom).toBe(degreesOfFreedom);
  });
});

describe("fitCurve against the straight line", () => {
  // For a model linear in its parameters the answer is known in closed form.
  it("agrees with fitLine, weights included", () => {
    const x = [1, 2, 3, 4, 6, 9];
    const y = [2.1, 3.9, 6.2, 7.8, 12.5, 17.6];
    const weights = [1, 2, 0.5, 0, 4, 0.25];
    const line = fitLine(x, y, weights);
    const fit = fitCurve({ model: ([a, b], at) => a! + b! * at, x, y, weights, start: [0, 0] })!;
    expect(fit.parameters[0]).toBeCloseTo(line.intercept, 9);
    expect(fit.parameters[1]).toBeCloseTo(line.slope, 9);
    expect(fit.covariance[0]![1]).toBeCloseTo(line.covariance, 9);
    expect(fit.standardUncertainties[1]).toBeCloseTo(line.slopeUncertainty, 9);
    expect(fit.degreesOfFreedom).toBe(3);
  });
});

describe("fitCurve on warm-ups", () => {
  const minutes = Array.from({ length: 181 }, (_, i) => i);

  // Constructed: 22 to 41 degC with a time constant of 45 minutes, without
  // noise; the parameters are then found to the rounding of the readings.
  it("finds the curve that made the readings", () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 90 }), fc.integer({ min: 5, max: 60 }), (tau, rise) => {
        const y = minutes.map((t) => warmUp([41, rise, tau], t));
        const fit = fitCurve({ model: warmUp, x: minutes, y, start: [35, 20, 30] })!;
        expect(fit.parameters[0]).toBeCloseTo(41, 6);
        expect(fit.parameters[2]).toBeCloseTo(tau, 5);
      }),
      { numRuns: 50 },
    );
  });

  // Constructed: 300 noisy warm-ups. The claimed standard uncertainty of tau
  // against its real spread, known to 4 %.
  it("claims the uncertainty that it has", () => {
    const normal = seededNormal(31);
    let claimed = 0;
    const found: number[] = [];
    for (let run = 0; run < 300; run++) {
      const y = minutes.map((t) => warmUp([41, 19, 45], t) + 0.2 * normal());
      const fit = fitCurve({ model: warmUp, x: minutes, y, start: [38, 15, 30] })!;
      found.push(fit.parameters[2]!);
      claimed += fit.standardUncertainties[2]! / 300;
    }
    const centre = found.reduce((sum, value) => sum + value, 0) / 300;
    const spread = Math.sqrt(found.reduce((sum, value) => sum + (value - centre) ** 2, 0) / 299);
    expect(claimed / spread).toBeGreaterThan(0.87);
    expect(claimed / spread).toBeLessThan(1.15);
  });
});

describe("fitCurve where it cannot fit", () => {
  it("gives null for too few readings, a start off the map, or parameters alike", () => {
    expect(fitCurve({ model: straight, x: [1, 2], y: [1, 2], start: [0, 0] })).toBeNull();
    expect(fitCurve({ model: root, x: [1, 2, 3], y: [1, 2, 3], start: [-1] })).toBeNull();
    expect(fitCurve({ model: twice, x: [1, 2, 3, 4], y: [1, 2, 3, 5], start: [0, 0] })).toBeNull();
  });

  it("says so when it runs out of steps", () => {
    const fit = fitCurve({
      model: twoExponentials,
      x: mgh17.x,
      y: mgh17.y,
      start: [50, 150, -100, 1, 2],
      maxIterations: 5,
    });
    expect(fit?.converged ?? false).toBe(false);
    expect(fit?.iterations ?? 5).toBe(5);
  });
});
