/** The report as a browser sees it: accessibility, width, network, dark mode, paper. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toHtml } from "../../src/report/html.ts";
import { axeFindings, launch, noBrowser, open, unfold } from "./browser.ts";
import { demoNight } from "./demo-kitchen.ts";
import {
  hostileNames,
  hostileNight,
  missesNight,
  severalProbes,
  unprovenNight,
} from "./sample-analysis.ts";
import { grownNight } from "./sample-growth.ts";

const nights = { severalProbes, unprovenNight, missesNight, hostileNight, grownNight, demoNight };

describe.skipIf(noBrowser())("the report in Chromium", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-report-"));
  const address = (name: string): string => pathToFileURL(join(folder, `${name}.html`)).href;
  let browser: Browser;

  beforeAll(async () => {
    await Promise.all(
      Object.entries(nights).map(async ([name, night]) => {
        const html = await toHtml(await night(), { renderedOn: "2026-03-15" });
        writeFileSync(join(folder, `${name}.html`), html);
      }),
    );
    browser = await launch();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  for (const scheme of ["light", "dark"] as const) {
    for (const name of Object.keys(nights)) {
      it.each([360, 1280])(
        `has no violation axe can find: ${name}, ${scheme}, %d px`,
        async (width) => {
          const { page } = await open(browser, address(name), { scheme, width });
          await unfold(page);
          const { violations, passed } = await axeFindings(page);
          expect(violations).toEqual([]);
          expect(passed).toBeGreaterThan(15);
          await page.close();
        },
        60_000,
      );
    }
  }

  it.each([
    [1280, 2],
    [360, 1],
  ])("answers on the first screen: at %d px at least %d probes", async (width, least) => {
    const { page } = await open(browser, address("severalProbes"), { width });
    const seen = await page.evaluate(
      () =>
        [...document.querySelectorAll(".lead li")].filter(
          (item) => item.getBoundingClientRect().bottom < innerHeight,
        ).length,
    );
    expect(seen).toBeGreaterThanOrEqual(least);
    await page.close();
  });

  it("folds further figures away on screen and shows them on paper", async () => {
    const { page } = await open(browser, address("unprovenNight"));
    const shown = () =>
      page.evaluate(() =>
        [...document.querySelectorAll("details table")].map((table) => table.checkVisibility()),
      );
    const onScreen = await shown();
    expect(onScreen.length).toBeGreaterThanOrEqual(3);
    expect(onScreen).not.toContain(true);
    await page.locator("summary").first().click();
    expect((await shown()).filter(Boolean).length).toBe(1);
    await page.locator("summary").first().click();
    await page.emulateMedia({ media: "print" });
    expect(await shown()).not.toContain(false);
    await page.close();
  });

  describe.each(Object.keys(nights))("%s", (name) => {
    it.each([360, 768, 1280])(
      "never scrolls sideways at %d px",
      async (width) => {
        const { page } = await open(browser, address(name), { width });
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        await page.close();
      },
      60_000,
    );

    it("asks the network for nothing and gives the browser nothing to complain of", async () => {
      const { page, requests, complaints } = await open(browser, address(name));
      expect(requests).toEqual([]);
      expect(complaints).toEqual([]);
      await page.close();
    }, 60_000);
  });

  it("keeps chart text readable on a phone", async () => {
    const { page } = await open(browser, address("unprovenNight"), { width: 360 });
    const heights = await page.evaluate(() =>
      [...document.querySelectorAll("figure svg text")]
        .map((text) => text.getBoundingClientRect())
        .filter(({ width }) => width > 0)
        .map(({ height }) => height),
    );
    expect(heights.length).toBeGreaterThan(10);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(11);
    await page.close();
  });

  it("makes no element of a hostile name, and shows the name as text", async () => {
    const { page, complaints } = await open(browser, address("hostileNight"));
    expect(await page.locator("script, img, svg[onload], [onerror]").count()).toBe(0);
    expect(await page.locator("body").innerText()).toContain(hostileNames[0]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("turns dark with the reader's setting, charts too", async () => {
    const grounds = await Promise.all(
      (["light", "dark"] as const).map(async (scheme) => {
        const { page } = await open(browser, address("severalProbes"), { scheme });
        const found = await page.evaluate(() => {
          const text = document.querySelector("figure .wide svg text")!;
          return `${getComputedStyle(document.body).backgroundColor} ${getComputedStyle(text).fill}`;
        });
        await page.close();
        return found;
      }),
    );
    expect(grounds[0]).not.toBe(grounds[1]);
    const [paper, ink] = grounds.map((each) => each.match(/\d+/g)!.map(Number));
    expect(paper![0]).toBeGreaterThan(240);
    expect(paper![3]).toBeLessThan(120);
    expect(ink![0]).toBeLessThan(40);
    expect(ink![3]).toBeGreaterThan(140);
  });

  it("can be walked by keyboard: the first stop leads past the header", async () => {
    const { page } = await open(browser, address("severalProbes"));
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.getAttribute("href"))).toBe(
      "#answers",
    );
    await page.close();
  });

  it("prints light, with no chart and no answer wider or taller than a sheet of A4", async () => {
    const { page } = await open(browser, address("severalProbes"), { scheme: "dark", width: 680 });
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    const boxes = await page.evaluate(() =>
      [...document.querySelectorAll("figure, .answer")].map((element) => ({
        height: element.getBoundingClientRect().height,
        inside: getComputedStyle(element).breakInside,
      })),
    );
    expect(boxes.length).toBeGreaterThan(8);
    // A4 less its margins: 297 - 2 x 16 mm at 96 px per inch.
    for (const { height, inside } of boxes) {
      expect(inside).toBe("avoid");
      expect(height).toBeLessThan(((297 - 32) / 25.4) * 96);
    }
    const ink = await page.evaluate(() => getComputedStyle(document.body).color);
    expect(ink.match(/\d+/g)!.map(Number)[0]).toBeLessThan(40);
    const pdf = await page.pdf({ format: "A4", preferCSSPageSize: true });
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    await page.close();
  }, 60_000);
});
