import { expect, it } from "vitest";
import { dwellSpec } from "../../../src/report/charts/dwell.ts";
import { figure, keyEntry } from "../../../src/report/sections/figure.ts";

it("draws once for a page and once for a phone, with ids apart", async () => {
  const { html } = await figure({
    id: "f",
    title: "T",
    description: "D",
    spec: (size) => dwellSpec({ below: 1, inside: 2, above: 0 }, size),
    key: [keyEntry("inside", "<in>")],
    caption: "C & D",
  });
  expect(html.match(/<div class="(?:wide|narrow)"><svg /g)!.length).toBe(2);
  expect(html).toContain('id="f-wide-title"');
  expect(html).toContain('id="f-narrow-title"');
  expect(html).toContain("<span>&lt;in&gt;</span>");
  expect(html).toContain("<figcaption>C &amp; D</figcaption>");
});
