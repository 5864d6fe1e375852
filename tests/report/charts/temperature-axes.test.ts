import { expect, it } from "vitest";
import { leftAxis, rightAxis } from "../../../src/report/charts/temperature-axes.ts";

/** Texts of the right axis with the value of the left scale at which each stands. */
const marks = (unit: "degC" | "degF", low: number, high: number) =>
  rightAxis(unit, { domain: { low, high }, height: 1000 }, 8, 600).map(({ text, y }) => ({
    text,
    at: high - (y / 1000) * (high - low),
  }));

it("gives the left axis round ticks and its unit once, on the highest", () => {
  const axis = leftAxis("degC", { low: 19.5, high: 46 }, 8);
  expect(axis.ticks).toEqual([20, 25, 30, 35, 40, 45]);
  expect(axis.words).toEqual(["20", "25", "30", "35", "40", "45 °C"]);
});

it("writes as many decimals as the step needs, and a true minus", () => {
  expect(leftAxis("degC", { low: 38, high: 39.1 }, 6).words.slice(0, 2)).toEqual(["38.0", "38.2"]);
  expect(leftAxis("degC", { low: 38, high: 38.25 }, 6).words.slice(0, 2)).toEqual([
    "38.00",
    "38.05",
  ]);
  expect(leftAxis("degC", { low: -6, high: 6 }, 3).words[0]).toBe("−5");
});

// Pairs on both scales by definition: 10 degC = 50 degF, 20 = 68, 30 = 86, 40 = 104.
it("places the other unit's round ticks where they belong", () => {
  expect(marks("degC", 18, 45).map(({ text }) => text)).toEqual([
    "70",
    "80",
    "90",
    "100",
    "110 °F",
  ]);
  expect(marks("degF", 50, 104)).toEqual(
    [
      [50, "10"],
      [59, "15"],
      [68, "20"],
      [77, "25"],
      [86, "30"],
      [95, "35"],
      [104, "40 °C"],
    ].map(([at, text]) => ({ at: expect.closeTo(at as number, 9), text })),
  );
});
