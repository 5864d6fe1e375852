import fc from "fast-check";
import { expect, it } from "vitest";
import { timeAtTemperature } from "../../../src/report/charts/histogram.ts";

it("adds up the minutes each reading stands for", () => {
  const bars = timeAtTemperature(
    Float64Array.of(40, 40.1, 40.1, 40.4),
    Float64Array.of(1, 2, 3, 4),
    4,
    0.1,
  );
  expect(bars.map(({ low, minutes }) => [Number(low.toFixed(6)), minutes])).toEqual([
    [40, 1],
    [40.1, 5],
    [40.2, 0],
    [40.3, 0],
    [40.4, 4],
  ]);
});

it("loses no time and makes no needless bars", () => {
  const readings = fc.array(fc.double({ min: -20, max: 110, noNaN: true }), {
    minLength: 1,
    maxLength: 200,
  });
  fc.assert(
    fc.property(readings, (list) => {
      const bars = timeAtTemperature(
        Float64Array.from(list),
        new Float64Array(list.length).fill(1),
        32,
        0.1,
      );
      expect(bars.reduce((sum, { minutes }) => sum + minutes, 0)).toBeCloseTo(list.length, 9);
      expect(bars.length).toBeLessThanOrEqual(34);
    }),
  );
});

it("draws one bar for one value, none for none", () => {
  expect(timeAtTemperature(Float64Array.of(40), Float64Array.of(5), 32, 0.1).length).toBe(1);
  expect(timeAtTemperature(new Float64Array(), new Float64Array(), 32, 0.1)).toEqual([]);
});
