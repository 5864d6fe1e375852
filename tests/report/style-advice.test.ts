import { expect, it } from "vitest";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { advicePhone, adviceStyle } from "../../src/report/style-advice.ts";
import { style } from "../../src/report/style.ts";
import { sampleKitchen } from "./sample-kitchen.ts";

it("is part of the one style sheet, and its small form of the small one", () => {
  expect(style.indexOf(adviceStyle)).toBeLessThan(style.indexOf("@media screen"));
  expect(style.indexOf(advicePhone)).toBeGreaterThan(style.indexOf("@media screen"));
  expect(style.indexOf(advicePhone)).toBeLessThan(style.indexOf("@media print"));
});

it("has colours from the palette only, and styles nothing that the page does not have", async () => {
  expect(adviceStyle).not.toMatch(/#[0-9a-f]{3,6}\b|rgb|hsl/i);
  const html = await toKitchenHtml(sampleKitchen(), { renderedOn: "2026-03-20" });
  const used = new Set(
    [...html.matchAll(/class="([^"]+)"/g)].flatMap(([, names]) => names!.split(" ")),
  );
  const styled = [...adviceStyle.matchAll(/\.([a-z][a-z-]*)/g)].map(([, name]) => name!);
  expect(styled.length).toBeGreaterThan(5);
  expect(styled.filter((name) => !used.has(name))).toEqual([]);
});
