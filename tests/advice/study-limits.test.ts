import { describe, expect, it } from "vitest";
import { fewestAt, mostAt } from "./study-limits.ts";

describe("mostAt", () => {
  it("agrees with the binomial distribution summed by hand", () => {
    // n = 10, p = 0.5: P(X <= 8) = 1013/1024 = 0.98926, P(X <= 9) = 1023/1024 = 0.99902.
    expect(mostAt(0.5, 10)).toBe(9);
    // n = 4, p = 0.1: P(X <= 1) = 0.9477, P(X <= 2) = 0.9963.
    expect(mostAt(0.1, 4)).toBe(2);
    // Never more than there are.
    expect(mostAt(0.999, 5)).toBe(5);
  });

  it("grows to the rate itself", () => {
    // Normal approximation: 0.1 + 2.326 sqrt(0.09 / 900) = 0.1233.
    expect(Math.abs(mostAt(0.1, 900) / 900 - 0.1233)).toBeLessThan(0.003);
  });
});

describe("fewestAt", () => {
  it("mirrors it", () => {
    expect(fewestAt(0.5, 10)).toBe(1);
    expect(fewestAt(0.03, 40)).toBe(0);
  });
});
