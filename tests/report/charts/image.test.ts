import { expect, it } from "vitest";
import { imageTag, percentOf, stretchedImage } from "../../../src/report/charts/image.ts";

const caption = { id: "a", title: 'A "<b>"', description: "d & e" };

it("says in words what it shows, names kept as text", () => {
  const tag = imageTag(caption, 'viewBox="0 0 1 1"');
  expect(tag).toContain('role="img" viewBox="0 0 1 1" aria-labelledby="a-title a-desc"');
  expect(tag).toContain('<title id="a-title">A &quot;&lt;b&gt;&quot;</title>');
  expect(tag).toContain('<desc id="a-desc">d &amp; e</desc>');
});

it("stretches to the page's width at its own height", () => {
  const image = stretchedImage(caption, 28, "<rect/>");
  expect(image).toMatch(/^<svg [^>]*width="100%" height="28"/);
  expect(image).toMatch(/<rect\/><\/svg>$/);
});

it("writes shares in per cent", () => {
  expect([0, 1 / 3, 1].map(percentOf)).toEqual(["0%", "33.33%", "100%"]);
});
