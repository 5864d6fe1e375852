import { expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { hourAxis } from "../../../src/report/charts/hour-axis.ts";

const [wide, narrow] = [sizes[0]!, sizes[1]!];
const start = Date.UTC(2026, 2, 14, 21, 37);

it("puts the logger's clock under the hours, past midnight", () => {
  const axis = hourAxis({ low: 0, high: 9 }, start, narrow);
  expect(axis.ticks).toEqual([0, 2, 4, 6, 8]);
  expect(axis.words.slice(0, 3)).toEqual([
    ["0 h", "21:37"],
    ["2 h", "23:37"],
    ["4 h", "01:37"],
  ]);
});

it("counts hours alone where the file has no clock, with more ticks on a page", () => {
  const axis = hourAxis({ low: 0, high: 9 }, null, wide);
  expect(axis.ticks.length).toBe(10);
  expect(axis.words.slice(0, 2)).toEqual([["0 h"], ["1 h"]]);
});
