import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitCurve } from "../../src/stats/curve-fit.ts";
import { fitLine } from "../../src/stats/line-fit.ts";
import { correctDigits } from "./correct-digits.ts";
import { boxBod, chwirut2, mgh17, misra1a, type Pairs } from "./nist-data.ts";
import { seededNormal } from "./seeded-noise.ts";

type Model = (parameters: readonly number[], x: number) => number;

const saturation: Model = ([b1, b2], x) => b1! * (1 - Math.exp(-b2! * x));
const twoExponentials: Model = ([b1, b2, b3, b4, b5], x) =>
  b1! + b2! * Math.exp(-x * b4!) + b3! * Math.exp(-x * b5!);
const ultrasonic: Model = ([b1, b2, b3], x) => Math.exp(-b1! * x) / (b2! + b3! * x);

const warmUp: Model = ([end, rise, tau], t) => end! - rise! * Math.exp(-t / tau!);
const straight: Model = ([a, b], x) => a! + b! * x;
const root: Model = ([a], x) => Math.sqrt(a! * x);
const twice: Model = ([a, b], x) => (a! + b!) * x;

interface Certified {
  readonly name: string;
  readonly data: Pairs;
  readonly model: Model;
  readonly starts: readonly (readonly number[])[];
  readonly parameters: readonly number[];
  readonly deviations: readonly number[];
  readonly squares: number;
  readonly residual: number;
}

// NIST StRD, Nonlinear Regression: certified parameters, their standard
// deviations, residual sum of squares and standard deviation, and both starts.
const certified: readonly Certified[] = [
  {
    name: "Misra1a",
    data: misra1a,
    model: saturation,
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    parameters: [2.3894212918e2, 5.5015643181e-4],
    deviations: [2.7070075241, 7.2668688436e-6],
    squares: 1.2455138894e-1,
    residual: 1.018787633e-1,
  },
  {
    name: "BoxBOD",
    data: boxBod,
    model: saturation,
    starts: [
      [1, 1],
      [100, 0.75],
    ],
    parameters: [2.1380940889e2, 5.4723748542e-1],
    deviations: [1.2354515176e1, 1.0455993237e-1],
    squares: 1.1680088766e3,
    residual: 1.7088072423e1,
  },
  {
    name: "MGH17",
    data: mgh17,
    model: twoExponentials,
    starts: [
      [50, 150, -100, 1, 2],
      [0.5, 1.5, -1, 0.01, 0.02],
    ],
    parameters: [3.7541005211e-1, 1.9358469127, -1.4646871366, 1.286753464e-2, 2.2122699662e-2],
    deviations: [
      2.0723153551e-3, 2.2031669222e-1, 2.2175707739e-1, 4.4861358114e-4, 8.9471996575e-4,
    ],
    squares: 5.4648946975e-5,
    residual: 1.3970497866e-3,
  },
  {
    name: "Chwirut2",
    data: chwirut2,
    model: ultrasonic,
    starts: [
      [0.1, 0.01, 0.02],
      [0.15, 0.008, 0.01],
    ],
    parameters: [1.6657666537e-1, 5.1653291286e-3, 1.2150007096e-2],
    deviations: [3.830328681e-2, 6.6621605126e-4, 1.5304234767e-3],
    squares: 5.1304802941e2,
    residual: 3.171713304,
  },
];

const cases = certified.flatMap((item) =>
  item.starts.map((start, i) => [`${item.name}, start ${i + 1}`, item, start] as const),
);

describe("fitCurve on NIST StRD, no derivatives given", () => {
  it.each(cases)("%s", (_, item, start) => {
    const fit = fitCurve({ model: item.model, x: item.data.x, y: item.data.y, start })!;
    expect(fit.converged).toBe(true);
    fit.parameters.forEach((value, j) =>
      expect(correctDigits(value, item.parameters[j]!)).toBeGreaterThanOrEqual(8),
    );
    fit.standardUncertainties.forEach((value, j) =>
      expect(correctDigits(value, item.deviations[j]!)).toBeGreaterThanOrEqual(6),
    );
    expect(correctDigits(fit.residualSumOfSquares, item.squares)).toBeGreaterThanOrEqual(9);
    expect(correctDigits(fit.residualStandardDeviation, item.residual)).toBeGreaterThanOrEqual(9);
    expect(fit.degreesOfFreedom).toBe(item.data.x.length - start.length);
  });
});

describe("fitCurve with derivatives", () => {
  it("reaches the same from Misra1a's first start", () => {
    const fit = fitCurve({
      model: saturation,
      jacobian: ([b1, b2], x) => [1 - Math.exp(-b2! * x), b1! * x * Math.exp(-b2! * x)],
      x: misra1a.x,
      y: misra1a.y,
      start: [500, 0.0001],
    })!;
    expect(correctDigits(fit.parameters[0]!, 2.3894212918e2)).toBeGreaterThanOrEqual(9);
    expect(correctDigits(fit.standardUncertainties[1]!, 7.2668688436e-6)).toBeGreaterThanOrEqual(9);
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
