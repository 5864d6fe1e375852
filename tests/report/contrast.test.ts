/** Words of both reports can be read in every scheme, in forced colours too, and those of charts, which axe passes over. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toHtml } from "../../src/report/html.ts";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { launch, noBrowser, open } from "./browser.ts";
import { demoKitchen, demoNight } from "./demo-kitchen.ts";

/** For text of any size (WCAG 2.2, 1.4.3). */
const least = 4.5;

/**
 * Runs in the page: contrast of each text with what it stands on, by relative
 * luminance (WCAG 2.2, 1.4.3). Where nothing of its own is behind it: the page's ground.
 */
const contrasts = (selector: string) => {
  // It is sent to the page by itself, so it brings along all it needs.
  // oxlint-disable-next-line consistent-function-scoping
  const channels = (colour: string): number[] => colour.match(/[\d.]+/g)!.map(Number);
  // oxlint-disable-next-line consistent-function-scoping
  const linear = (value: number): number =>
    value <= 0.040_45 * 255 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
  const luminance = (colour: string): number => {
    const [red = 0, green = 0, blue = 0] = channels(colour).map(linear);
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const groundOf = (element: Element | null): string => {
    if (element === null) return "rgb(255, 255, 255)";
    const { backgroundColor } = getComputedStyle(element);
    return channels(backgroundColor)[3] === 0 ? groundOf(element.parentElement) : backgroundColor;
  };
  return [...document.querySelectorAll(selector)]
    .filter((element) => element.checkVisibility())
    .map((element) => {
      const { color, fill } = getComputedStyle(element);
      const ink = element instanceof SVGElement ? fill : color;
      const [low, high] = [luminance(ink), luminance(groundOf(element))].toSorted((a, b) => a - b);
      const contrast = (high! + 0.05) / (low! + 0.05);
      return { text: element.textContent.slice(0, 40), ink, contrast };
    });
};

describe.skipIf(noBrowser())("words of the reports in Chromium", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-contrast-"));
  let browser: Browser;

  beforeAll(async () => {
    const rendered = { renderedOn: "2026-11-20" };
    writeFileSync(join(folder, "night.html"), await toHtml(await demoNight(), rendered));
    writeFileSync(join(folder, "kitchen.html"), await toKitchenHtml(await demoKitchen(), rendered));
    browser = await launch();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  const words = async (
    name: string,
    forcedColors: "none" | "active",
    colorScheme: "light" | "dark",
  ) => {
    const { page } = await open(browser, pathToFileURL(join(folder, `${name}.html`)).href);
    await page.emulateMedia({ forcedColors, colorScheme });
    const seen = await page.evaluate(contrasts, ".mark, figure svg text");
    await page.close();
    return seen;
  };

  it.each([
    ["night", "none", "light"],
    ["night", "none", "dark"],
    ["kitchen", "none", "light"],
    ["kitchen", "none", "dark"],
    ["kitchen", "active", "light"],
    ["kitchen", "active", "dark"],
  ] as const)(
    "%s, forced colours %s, %s: verdicts and charts can be read",
    async (name, forced, scheme) => {
      const seen = await words(name, forced, scheme);
      expect(seen.length).toBeGreaterThan(name === "night" ? 40 : 200);
      expect(seen.filter(({ contrast }) => contrast < least)).toEqual([]);
    },
  );

  it("finds words that cannot be read", async () => {
    const file = join(folder, "pale.html");
    writeFileSync(
      file,
      `<!doctype html><title>t</title><p style="color: #777">`.concat("4.48 to 1"),
    );
    const { page } = await open(browser, pathToFileURL(file).href);
    // #777777 on white is 4.48 : 1, the grey that just fails (from memory).
    const [pale] = await page.evaluate(contrasts, "p");
    await page.close();
    expect(pale!.contrast).toBeCloseTo(4.48, 2);
  });
});
