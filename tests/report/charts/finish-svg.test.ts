import { expect, it } from "vitest";
import { finishSvg } from "../../../src/report/charts/finish-svg.ts";

const raw =
  '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" version="1.1" class="marks" width="343" height="170.5" viewBox="0 0 343 170.5">' +
  '<defs><clipPath id="clip7"><rect x="0"/></clipPath></defs><g class="mark" clip-path="url(#clip7)"><path class="background" aria-hidden="true" d="M0,0h1"/>' +
  '<path d="M0.123456,-54.5454L1e-7,9.9999" stroke="var(--line)"/>' +
  '<text font-family="sans-serif" opacity="1" style="x">1.23456 &lt;b class="x"&gt;</text></g></svg>';

const finished = finishSvg(raw, { id: "n1", title: "A <title>", description: 'Says "it"' });

it("names the picture and what it shows, as text", () => {
  expect(finished).toMatch(
    /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" role="img" viewBox="0 0 343 170\.5" font-size="12\.5" aria-labelledby="n1-title n1-desc">/,
  );
  expect(finished).toContain('<title id="n1-title">A &lt;title&gt;</title>');
  expect(finished).toContain('<desc id="n1-desc">Says &quot;it&quot;</desc>');
});

it("caps decimals in drawings only, never in words", () => {
  expect(finished).toContain('d="M0.12,-54.55L1e-7,10"');
  expect(finished).toContain('<text>1.23456 &lt;b class="x"&gt;</text>');
});

it("drops what is not seen and makes ids its own", () => {
  expect(finished).not.toMatch(/background|xlink|style=|font-family|class="mark/);
  expect(finished).toContain('<clipPath id="n1-clip7">');
  expect(finished).toContain('clip-path="url(#n1-clip7)"');
});

it("draws hatched boxes as lines cut off at the box, each by a shape of its own", () => {
  const box = '<path d="M4,20h100v30h-100Z" fill="url(#rising)"/>';
  const flat = '<path d="M4,20h100v0h-100Z" fill="url(#falling)"/>';
  const svg = `<svg width="200" height="90"><g fill="none">${box}${flat}${box}</g></svg>`;
  const drawn = finishSvg(svg, { id: "n2", title: "t", description: "d" });
  expect(drawn.match(/<clipPath id="[^"]*"/g)).toEqual([
    '<clipPath id="n2-hatch1"',
    '<clipPath id="n2-hatch3"',
  ]);
  expect(drawn.match(/<g clip-path="[^"]*"/g)).toEqual([
    '<g clip-path="url(#n2-hatch1)"',
    '<g clip-path="url(#n2-hatch3)"',
  ]);
  expect(drawn).not.toMatch(/pattern|url\(#(?:n2-)?(?:rising|falling)/);
});

it("says the letters' size once, and nothing that SVG takes for granted", () => {
  const plain =
    '<svg width="9" height="9"><g class="a"><g transform="translate(0,0)"><g fill="none">' +
    '<line x2="0" y2="5" stroke="var(--rule)" stroke-width="1"/><text font-size="12.5px">a</text>' +
    '<text font-size="9px">b</text></g></g></g></svg>';
  const body = finishSvg(plain, { id: "n3", title: "t", description: "d" }).split("</desc>")[1];
  expect(body).toBe(
    '<g fill="none"><line y2="5" stroke="var(--rule)"/><text>a</text><text font-size="9px">b</text></g></svg>',
  );
});
