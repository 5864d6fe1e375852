import { expect, it } from "vitest";
import { placeLevels } from "../../../src/report/charts/level-labels.ts";

const around = { readings: null, plotHeight: 300, textSize: 12 };
const half = 12 / 2 + 2.5;

it("puts a window's name inside its upper edge, a ceiling's above its line", () => {
  const placed = placeLevels(
    [
      { text: "never above 43", top: 40, bottom: 40 },
      { text: "reuteri", top: 80, bottom: 140 },
    ],
    around,
  );
  expect(placed.map(({ y }) => y)).toEqual([40 - half, 80 + half]);
});

it("goes to the other edge where the readings run", () => {
  const [placed] = placeLevels([{ text: "reuteri", top: 80, bottom: 140 }], {
    ...around,
    readings: { low: 82, high: 95 },
  });
  expect(placed!.y).toBe(140 - half);
});

it("keeps names off each other and on the plot", () => {
  const placed = placeLevels(
    [
      { text: "never above 43", top: 4, bottom: 4 },
      { text: "a", top: 6, bottom: 60 },
      { text: "b", top: 6, bottom: 60 },
    ],
    around,
  ).map(({ y }) => y);
  for (const y of placed) expect(y).toBeGreaterThanOrEqual(half - 1);
  const sorted = placed.toSorted((a, b) => a - b);
  for (let at = 1; at < sorted.length; at += 1) {
    expect(sorted[at]! - sorted[at - 1]!).toBeGreaterThanOrEqual(12);
  }
});

it("stands in the middle of a window with hardly room for it", () => {
  expect(placeLevels([{ text: "a", top: 100, bottom: 112 }], around)[0]!.y).toBe(106);
});

it("rather covers the readings than stands in a neighbour's window, where it would pass for its name", () => {
  const placed = placeLevels(
    [
      { text: "warm", top: 60, bottom: 81 },
      { text: "low", top: 81, bottom: 102 },
    ],
    { ...around, readings: { low: 82, high: 101 } },
  );
  const [warm, low] = placed.map(({ y }) => y);
  expect(warm).toBeLessThan(81);
  expect(low).toBeGreaterThan(81);
});
