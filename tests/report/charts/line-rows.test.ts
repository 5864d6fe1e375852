import { expect, it } from "vitest";
import { gapMinutes, lineRows } from "../../../src/report/charts/line-rows.ts";

it("gives hours and the drawn unit, and stops the line at a gap", () => {
  const minutes = Float64Array.of(0, 30, 60, 360, 390);
  const celsius = Float64Array.of(40, 40, 41, 41, 40);
  const rows = lineRows(minutes, celsius, gapMinutes(minutes), 100, "degF");
  expect(rows).toEqual([
    { hour: 0, value: 104 },
    { hour: 0.5, value: 104 },
    { hour: 1, value: expect.closeTo(105.8, 9) },
    { hour: 1, value: null },
    { hour: 6, value: expect.closeTo(105.8, 9) },
    { hour: 6.5, value: 104 },
  ]);
});

it("takes four usual steps for a gap", () => {
  expect(gapMinutes(Float64Array.of(0, 1, 2, 3, 60))).toBe(4);
  expect(gapMinutes(Float64Array.of(5))).toBe(0);
});
