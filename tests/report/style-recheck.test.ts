import { expect, it } from "vitest";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { style } from "../../src/report/style.ts";
import { recheckStyle } from "../../src/report/style-recheck.ts";
import { recheckedKitchen, sampleDue } from "./sample-recheck.ts";

it("is part of the one style sheet, before what makes it small or paper", () => {
  expect(style).toContain(recheckStyle);
  expect(style.indexOf(recheckStyle)).toBeLessThan(style.indexOf("@media screen"));
});

it("has colours from the palette only, which style.test.ts measures", () => {
  expect(recheckStyle).not.toMatch(/#[0-9a-f]{3,6}\b|rgb|hsl/i);
});

it("styles nothing that the page does not have", async () => {
  const html = await toKitchenHtml(recheckedKitchen({ due: [sampleDue] }), {
    renderedOn: "2026-03-20",
  });
  const body = html.slice(html.indexOf("<body>"));
  const used = new Set(
    [...body.matchAll(/class="([^"]+)"/g)].flatMap(([, names]) => names!.split(" ")),
  );
  const styled = [...recheckStyle.matchAll(/\.([a-z][a-z-]*)/g)].map(([, name]) => name!);
  expect(styled.length).toBeGreaterThan(5);
  expect(styled.filter((name) => !used.has(name))).toEqual([]);
});
