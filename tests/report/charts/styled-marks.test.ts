import { expect, it } from "vitest";
import { boxLayer, fixedScale, ruleLayer } from "../../../src/report/charts/styled-marks.ts";
import { draw } from "../drawing.ts";

const scales = { x: { low: 10, high: 20 }, y: { low: 0, high: 4 } };
const place = { from: 10, to: 15, low: 1, high: 3 };

it("gives each box its own look, on the scale as given, zero not added", async () => {
  const svg = await draw({
    width: 100,
    height: 40,
    config: { axis: { disable: true } },
    layer: [
      boxLayer([{ ...place, fill: "var(--window)" }], scales),
      boxLayer(
        [{ ...place, fill: "none", fillOpacity: 0.5, stroke: "var(--band)" }],
        scales,
        [3, 3],
      ),
    ],
  });
  expect(svg).toMatch(/d="M0,10h50v20h-50Z" fill="var\(--window\)"/);
  expect(svg).toMatch(/stroke="var\(--band\)"[^>]*stroke-dasharray="3,3"/);
});

it("draws level rules with their own width and dash", async () => {
  const svg = await draw({
    width: 100,
    height: 40,
    layer: [
      ruleLayer(
        [
          { from: 10, to: 20, at: 2, stroke: "var(--limit)", width: 1.6, dash: [7, 4] },
          { from: 10, to: 20, at: 3, stroke: "var(--window-edge)", width: 1.2 },
        ],
        scales,
      ),
    ],
  });
  expect(svg).toMatch(/stroke="var\(--limit\)" stroke-width="1\.6" stroke-dasharray="7,4"/);
  expect(svg).toMatch(/stroke="var\(--window-edge\)" stroke-width="1\.2"/);
});

it("fixes a scale to what it is told", () => {
  expect(fixedScale({ low: 38, high: 43 })).toEqual({ domain: [38, 43], nice: false, zero: false });
});
