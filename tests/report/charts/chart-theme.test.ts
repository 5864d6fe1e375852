import { expect, it } from "vitest";
import {
  baseConfig,
  colour,
  fromOther,
  toOther,
  toScale,
} from "../../../src/report/charts/chart-theme.ts";
import { style } from "../../../src/report/style.ts";

it("takes every colour from a variable that the style sheet sets", () => {
  for (const value of Object.values(colour)) {
    const name = /^var\((--[a-z-]+)\)$/.exec(value)?.[1];
    expect(style).toContain(`${name}: `);
  }
});

// 37 degC = 98.6 degF, by definition of the scale.
it("goes from degC to the drawn scale and from it to the other unit and back", () => {
  expect(toScale("degC", 37)).toBe(37);
  expect(toScale("degF", 37)).toBeCloseTo(98.6, 12);
  expect(toOther("degC", 37)).toBeCloseTo(98.6, 12);
  expect(toOther("degF", 98.6)).toBeCloseTo(37, 12);
  for (const unit of ["degC", "degF"] as const) {
    expect(fromOther(unit, toOther(unit, 41.3))).toBeCloseTo(41.3, 12);
  }
});

it("keeps vega's own labels for machines out, and its own ground", () => {
  expect(baseConfig).toMatchObject({ aria: false, background: null });
});
