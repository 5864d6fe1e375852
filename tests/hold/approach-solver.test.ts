import { describe, expect, it } from "vitest";
import { solveApproach } from "../../src/hold/approach-solver.ts";

const times = Float64Array.from({ length: 200 }, (_, index) => index * 3);
const free = { slope: 1e3, bend: 1e3 };

describe("solveApproach", () => {
  it("is exact on its own curve", () => {
    const values = times.map(
      (t) => 40 + 0.3 * (t / 60) - 0.02 * (t / 60) ** 2 - 8 * Math.exp(-t / 70),
    );
    const solution = solveApproach({ times, values, scale: 1e-9 }, 70, free)!;
    expect(solution.level).toBeCloseTo(40, 6);
    expect(solution.slope).toBeCloseTo(0.3, 6);
    expect(solution.bend).toBeCloseTo(-0.02, 6);
    expect(solution.amplitude).toBeCloseTo(8, 6);
    expect(solution.earlyResidual).toBeLessThan(1e-6);
  });

  it("lets a tight prior hold the level still", () => {
    const values = times.map((t) => 40 + 0.3 * (t / 60));
    const still = solveApproach({ times, values, scale: 1 }, 30, { slope: 1e-6, bend: 1e-6 })!;
    expect(Math.abs(still.slope)).toBeLessThan(1e-6);
    const moving = solveApproach({ times, values, scale: 1e-9 }, 30, free)!;
    expect(moving.slope).toBeCloseTo(0.3, 6);
    expect(moving.cost).toBeLessThan(still.cost);
  });

  it("is null where the columns cannot be told apart", () => {
    const one = { times: Float64Array.of(0), values: Float64Array.of(1), scale: 0 };
    expect(solveApproach(one, 30, free)).toBeNull();
  });
});
