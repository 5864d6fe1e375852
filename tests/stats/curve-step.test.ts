import { describe, expect, it } from "vitest";
import {
  type CurveProblem,
  dampedStep,
  linearise,
  norm,
  pointAt,
  promisedFall,
} from "../../src/stats/curve-step.ts";

// y = a + b x through (0, 1) (1, 3) (2, 4): by hand a = 7/6, b = 3/2, and the sum of
// squares falls from 26 at (0, 0) to 1/6.
const problem: CurveProblem = {
  model: ([a, b], x) => a! + b! * x,
  x: [0, 1, 2],
  y: [1, 3, 4],
  start: [0, 0],
};

describe("one step of a curve fit", () => {
  const point = pointAt(problem, [0, 0]);
  const line = linearise(problem, point)!;

  it("starts from the residuals", () => {
    expect([...point.residuals]).toEqual([1, 3, 4]);
    expect(point.squares).toBe(26);
    expect(line.norms[1]).toBeCloseTo(Math.sqrt(5), 8);
  });

  it("reaches the solution of a linear problem at once when not damped", () => {
    const step = dampedStep(line, [1, 1], 0);
    expect(step[0]).toBeCloseTo(7 / 6, 8);
    expect(step[1]).toBeCloseTo(1.5, 8);
    expect(promisedFall(line, [1, 1], 0, step)).toBeCloseTo(26 - 1 / 6, 7);
  });

  // (J'J + I) s = J'r: [[4, 3], [3, 6]] s = [8, 11], s = (1, 4/3) by hand.
  it("falls short of it when damped", () => {
    const step = dampedStep(line, [1, 1], 1);
    expect(step[0]).toBeCloseTo(1, 8);
    expect(step[1]).toBeCloseTo(4 / 3, 8);
    expect(norm(step)).toBeCloseTo(5 / 3, 8);
  });

  it("leaves out readings without weight, and calls a curve off the map infinite", () => {
    expect(pointAt({ ...problem, weights: [4, 0, 1] }, [0, 0]).squares).toBe(4 + 16);
    const lost = { ...problem, model: () => NaN };
    expect(pointAt(lost, [0, 0]).squares).toBe(Infinity);
    expect(linearise(lost, pointAt(lost, [0, 0]))).toBeNull();
  });
});
