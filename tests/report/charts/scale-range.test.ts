import { describe, expect, it } from "vitest";
import {
  hourStep,
  multiples,
  roundStep,
  stretchOf,
  widened,
} from "../../../src/report/charts/scale-range.ts";

describe("round steps", () => {
  it.each([
    [25, 8, 5],
    [5, 6, 1],
    [0.9, 6, 0.2],
    [47, 8, 10],
    [100, 5, 20],
  ])("cuts %d into at most %d by steps of %d", (span, most, step) => {
    expect(roundStep(span, most)).toBeCloseTo(step, 12);
    expect(span / roundStep(span, most)).toBeLessThanOrEqual(most);
  });

  it("cuts hours as clocks do", () => {
    expect(hourStep(11, 12)).toBe(1);
    expect(hourStep(11, 5)).toBe(3);
    expect(hourStep(36, 5)).toBe(12);
    expect(hourStep(0.7, 5)).toBe(0.25);
  });

  it("lists the multiples inside, ends included, without binary dust", () => {
    expect(multiples({ low: 19.6, high: 45 }, 5)).toEqual([20, 25, 30, 35, 40, 45]);
    expect(multiples({ low: 0.1, high: 0.7 }, 0.2)).toEqual([0.2, 0.4, 0.6]);
    expect(multiples({ low: -1, high: 1 }, 1)).toEqual([-1, 0, 1]);
  });
});

it("takes lowest and highest of millions without a stack", () => {
  const values = Float64Array.from({ length: 2_000_000 }, (_, index) => Math.sin(index));
  const { low, high } = stretchOf(values, [2]);
  expect(low).toBeCloseTo(-1, 6);
  expect(high).toBe(2);
});

it("gives a little air, and at least some", () => {
  expect(widened({ low: 10, high: 20 }, 0.1, 0.5)).toEqual({ low: 9, high: 21 });
  expect(widened({ low: 40, high: 40 }, 0.1, 0.5)).toEqual({ low: 39.5, high: 40.5 });
});
