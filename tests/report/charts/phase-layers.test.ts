import { expect, it } from "vitest";
import { sizes } from "../../../src/report/charts/chart-theme.ts";
import { phaseLayers, rowHeight } from "../../../src/report/charts/phase-layers.ts";
import { draw } from "../drawing.ts";

it("writes each name in its row and runs its leader down the plot", async () => {
  const size = sizes[0]!;
  const labels = [
    { text: "warm-up", x: 4, from: 0, row: 1 },
    { text: "hold", x: 54, from: 50, row: 0 },
  ];
  const svg = await draw({ width: 200, height: 100, layer: phaseLayers(labels, size, 100) });
  const words = [...svg.matchAll(/translate\(([\d.]+),(-?[\d.]+)\)"[^>]*>([a-z-]+)</g)];
  expect(words.map(([, x, , text]) => [text, Number(x)])).toEqual([
    ["warm-up", 4],
    ["hold", 54],
  ]);
  expect(Number(words[1]![2]) - Number(words[0]![2])).toBeCloseTo(rowHeight(size), 1);
  expect(svg.match(/stroke-dasharray="2,3"/g)!.length).toBe(2);
});
