import { expect, it } from "vitest";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { style } from "../../src/report/style.ts";
import { kitchenStyle } from "../../src/report/style-kitchen.ts";
import { manyCultures, sampleKitchen } from "./sample-kitchen.ts";

it("is part of the one style sheet, before what makes it small or paper", () => {
  expect(style).toContain(kitchenStyle);
  expect(style.indexOf(kitchenStyle)).toBeLessThan(style.indexOf("@media screen"));
  expect(style.indexOf(kitchenStyle)).toBeLessThan(style.indexOf("@media print"));
});

it("has colours from the palette only, which style.test.ts measures", () => {
  expect(kitchenStyle).not.toMatch(/#[0-9a-f]{3,6}\b|rgb|hsl/i);
});

it("styles nothing that the page does not have", async () => {
  const pages = await Promise.all(
    [sampleKitchen(), manyCultures()].map((one) =>
      toKitchenHtml(one, { renderedOn: "2026-03-20" }),
    ),
  );
  const body = pages.map((html) => html.slice(html.indexOf("<body>"))).join("");
  const used = new Set(
    [...body.matchAll(/class="([^"]+)"/g)].flatMap(([, names]) => names!.split(" ")),
  );
  const styled = [...kitchenStyle.matchAll(/\.([a-z][a-z-]*)/g)].map(([, name]) => name!);
  expect(styled.length).toBeGreaterThan(10);
  expect(styled.filter((name) => !used.has(name))).toEqual([]);
});
