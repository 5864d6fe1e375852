import { describe, expect, it } from "vitest";
import { unitFromValues } from "../../../src/readings/columns/unit-rule.ts";

// The rule's own bounds are common sense; these nights are made by hand on either side of them.
describe("unitFromValues", () => {
  it.each([
    [
      "a hold at 41 degC",
      [21, 38, 41, 41.2, NaN, 40.9],
      { kind: "unit", unit: "degC", middle: 40.9 },
    ],
    [
      "the same in degF",
      [70, 100.4, 105.8, 106, 105.6],
      { kind: "unit", unit: "degF", middle: 105.6 },
    ],
    [
      "a cool degF hold that never passes 100",
      [68, 75, 80, 80, 80.5],
      { kind: "unit", unit: "degF", middle: 80 },
    ],
    ["between the scales", [58, 60, 60, 61], { kind: "undecidable", middle: 60 }],
    ["too cold for a kitchen in degF", [20, 90, 92, 92, 91], { kind: "undecidable", middle: 91 }],
    [
      "codes of failed sensors say nothing",
      [999, 999, -127, 41, 41],
      { kind: "unit", unit: "degC", middle: 41 },
    ],
  ])("%s", (_, values, finding) => {
    expect(unitFromValues([Float64Array.from(values)])).toEqual(finding);
  });
});
