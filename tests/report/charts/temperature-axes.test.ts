import { expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { leftAxis, rightAxis } from "../../../src/report/charts/temperature-axes.ts";

const rows = (unit: "degC" | "degF", low: number, high: number): { at: number; label: string }[] =>
  (rightAxis(unit, { low, high }, 8, 600, sizes[0]!) as { data: { values: [] } }).data.values;

it("gives the left axis round ticks and its unit once, on the highest", () => {
  const axis = leftAxis("degC", { low: 19.5, high: 46 }, 8);
  expect(axis["values"]).toEqual([20, 25, 30, 35, 40, 45]);
  expect(axis["labelExpr"]).toContain("datum.value === 45 ? datum.label + ' °C'");
});

// Pairs on both scales by definition: 10 degC = 50 degF, 20 = 68, 30 = 86, 40 = 104.
it("places the other unit's round ticks where they belong", () => {
  expect(rows("degC", 18, 45).map(({ label }) => label)).toEqual([
    "70",
    "80",
    "90",
    "100",
    "110 °F",
  ]);
  expect(rows("degF", 50, 104)).toEqual([
    { at: 50, label: "10" },
    { at: 59, label: "15" },
    { at: 68, label: "20" },
    { at: 77, label: "25" },
    { at: 86, label: "30" },
    { at: 95, label: "35" },
    { at: 104, label: "40 °C" },
  ]);
});

it("shows tenths only on a scale fine enough", () => {
  expect(rows("degC", 40, 40.6).every(({ label }) => /\.\d/.test(label))).toBe(true);
});
