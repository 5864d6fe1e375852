import { expect, it } from "vitest";
import { dwellImage } from "../../../src/report/charts/dwell.ts";
import { figure, keyEntry, stretchedFigure } from "../../../src/report/sections/figure.ts";
import { bare, caption } from "../drawing.ts";

it("draws once for a page and once for a phone, with ids apart", async () => {
  const { html } = await figure({
    id: "f",
    title: "T",
    description: "D",
    plot: ({ width }) => bare({ width }),
    key: [keyEntry("inside", "<in>")],
    caption: "C & D",
  });
  expect(html.match(/<div class="(?:wide|narrow)"><svg /g)!.length).toBe(2);
  expect(html).toContain('id="f-wide-title"');
  expect(html).toContain('id="f-narrow-title"');
  expect(html).toContain("<span>&lt;in&gt;</span>");
  expect(html).toContain("<figcaption>C &amp; D</figcaption>");
});

it("shows a chart that fits any width once", () => {
  const svg = dwellImage({ below: 1, inside: 2, above: 0 }, caption);
  const { html } = stretchedFigure(svg, { key: [], caption: "C" });
  expect(html.match(/<svg /g)!.length).toBe(1);
  expect(html).not.toContain('class="key"');
});
