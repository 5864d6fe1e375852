import { describe, expect, it } from "vitest";
import { createRandom } from "./random.ts";

const drawn = (count: number, draw: () => number): Float64Array =>
  Float64Array.from({ length: count }, draw);
const mean = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe("createRandom", () => {
  it("repeats itself for the same seed and label, and for no other", () => {
    const first = drawn(20, createRandom(7, "room").next);
    expect(drawn(20, createRandom(7, "room").next)).toEqual(first);
    expect(drawn(20, createRandom(8, "room").next)).not.toEqual(first);
    expect(drawn(20, createRandom(7, "logger").next)).not.toEqual(first);
    expect(drawn(20, createRandom(7 + 2 ** 32, "room").next)).not.toEqual(first);
  });

  it("has the moments of the uniform and the normal distribution", () => {
    // 100,000 draws: standard error of the mean 0.0009 and 0.0032, of the variances 0.00024 and 0.0045; 4.5 of these.
    const random = createRandom(1, "moments");
    const even = drawn(100_000, random.next);
    expect(Math.abs(mean(even) - 0.5)).toBeLessThan(0.0042);
    expect(Math.abs(mean(even.map((x) => (x - 0.5) ** 2)) - 1 / 12)).toBeLessThan(0.0011);
    const normal = drawn(100_000, () => random.normal(2, 1));
    expect(Math.abs(mean(normal) - 2)).toBeLessThan(0.0143);
    expect(Math.abs(mean(normal.map((x) => (x - 2) ** 2)) - 1)).toBeLessThan(0.0202);
  });

  it("does not correlate neighbouring seeds", () => {
    // Correlation of 20,000 independent pairs: standard error 0.0071; 4.5 of it.
    const pairs = Array.from({ length: 20_000 }, (_, seed) => createRandom(seed, "x").next() - 0.5);
    const product = pairs.reduce((sum, value, at) => sum + value * (pairs[at + 1] ?? 0), 0);
    expect(Math.abs(product / pairs.length) * 12).toBeLessThan(0.032);
  });

  it("draws items by their weight", () => {
    const random = createRandom(3, "weights");
    const items = Array.from({ length: 20_000 }, () =>
      random.weighted([["a", 1] as const, ["b", 3]]),
    );
    // Binomial standard error 0.0031; 4.5 of it.
    const share = items.filter((item) => item === "b").length / items.length;
    expect(Math.abs(share - 0.75)).toBeLessThan(0.014);
    expect(() => random.choice([])).toThrow(RangeError);
  });
});
