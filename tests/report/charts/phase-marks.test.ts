import { expect, it } from "vitest";
import { phaseMarks, rowHeight } from "../../../src/report/charts/phase-marks.ts";

it("writes each name in its row above the plot and runs its leader down to the plot's foot", () => {
  const labels = [
    { text: "warm-up", x: 4, from: 0, row: 1 },
    { text: "hold", x: 54, from: 50, row: 0 },
  ];
  const { rules, texts } = phaseMarks(labels, 100);
  expect(texts.map(({ text, x }) => [text, x])).toEqual([
    ["warm-up", 4],
    ["hold", 54],
  ]);
  expect(texts[1]!.y - texts[0]!.y).toBeCloseTo(rowHeight, 9);
  expect(texts[1]!.y).toBeLessThan(-6);
  rules.forEach(({ left, right, top, bottom }, at) => {
    expect([left, right, bottom]).toEqual([labels[at]!.from, labels[at]!.from, 100]);
    expect(top).toBeLessThan(texts[at]!.y);
  });
});
