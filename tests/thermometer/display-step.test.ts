import { describe, expect, it } from "vitest";
import { fahrenheitToCelsius } from "../../src/quantity.ts";
import { inferredStep } from "../../src/thermometer/display-step.ts";

describe("inferredStep", () => {
  it.each([
    [[0, 98.3, 41], 0.1],
    [[0, 98], 1],
    [[0.25, 38.5], 0.01],
    [[-0.171, 21.5], 0.001],
    [[38.1 + 0.2], 0.1],
  ])("of %j is %d", (readings, step) => expect(inferredStep(readings)).toBeCloseTo(step, 15));

  it("finds the decimals of a display in degF", () => {
    const read = [32.4, 211.3, 100.2].map(fahrenheitToCelsius);
    expect(inferredStep(read)).toBeCloseTo(0.1 / 1.8, 15);
    expect(inferredStep([33, 211].map(fahrenheitToCelsius))).toBeCloseTo(1 / 1.8, 15);
  });

  it("assumes 0.1 where the readings tell nothing", () => {
    expect(inferredStep([])).toBe(0.1);
    expect(inferredStep([Math.PI])).toBe(0.1);
  });
});
