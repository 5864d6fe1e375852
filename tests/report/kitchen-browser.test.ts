/** The kitchen's report as a browser sees it: accessibility, width, network, dark mode, paper. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { axeFindings, launch, noBrowser, open, unfold } from "./browser.ts";
import { demoKitchen } from "./demo-kitchen.ts";
import { hostileNames } from "./sample-analysis.ts";
import {
  hostileKitchen,
  manyCultures,
  oneAppliance,
  sampleKitchen,
  untestedKitchen,
} from "./sample-kitchen.ts";

const kitchens = {
  sampleKitchen,
  warmingBox: () => oneAppliance("box"),
  untestedKitchen,
  hostileKitchen,
  manyCultures,
  demoKitchen,
};

/** How many appliances are answered for before one scrolls. */
const answeredFor = async (browser: Browser, address: string, width: number): Promise<number> => {
  const { page } = await open(browser, address, { width });
  const count = await page.evaluate(
    () =>
      [...document.querySelectorAll(".by-appliance > li")].filter(
        (item) => item.getBoundingClientRect().bottom < innerHeight,
      ).length,
  );
  await page.close();
  return count;
};

describe.skipIf(noBrowser())("the kitchen's report in Chromium", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-kitchen-report-"));
  const address = (name: string): string => pathToFileURL(join(folder, `${name}.html`)).href;
  let browser: Browser;

  beforeAll(async () => {
    await Promise.all(
      Object.entries(kitchens).map(async ([name, kitchen]) => {
        const html = await toKitchenHtml(await kitchen(), { renderedOn: "2026-03-20" });
        writeFileSync(join(folder, `${name}.html`), html);
      }),
    );
    browser = await launch();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  it.each([
    ["demoKitchen", "light", 1280],
    ["demoKitchen", "dark", 1280],
    ["demoKitchen", "light", 360],
    ["demoKitchen", "dark", 360],
    ["sampleKitchen", "light", 1280],
    ["sampleKitchen", "dark", 360],
    ["warmingBox", "dark", 360],
    ["untestedKitchen", "light", 1280],
    ["hostileKitchen", "light", 360],
    ["manyCultures", "dark", 1280],
  ] as const)(
    "has no violation axe can find: %s, %s, %d px",
    async (name, scheme, width) => {
      const { page } = await open(browser, address(name), { scheme, width });
      await unfold(page);
      const { violations, passed } = await axeFindings(page);
      expect(violations).toEqual([]);
      expect(passed).toBeGreaterThan(15);
      await page.close();
    },
    60_000,
  );

  describe.each(Object.keys(kitchens))("%s", (name) => {
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

  it("answers for every appliance on the first screen of a desk, and for two on a phone's", async () => {
    expect(await answeredFor(browser, address("sampleKitchen"), 1280)).toBe(5);
    expect(await answeredFor(browser, address("sampleKitchen"), 360)).toBeGreaterThanOrEqual(2);
  });

  it("names the culture in each cell on a phone, where the columns have no head", async () => {
    const { page } = await open(browser, address("sampleKitchen"), { width: 360 });
    const shown = () =>
      page.evaluate(() => [
        document.querySelectorAll(".grouped td").length,
        [...document.querySelectorAll(".grouped td .column")].filter((item) =>
          item.checkVisibility(),
        ).length,
      ]);
    expect(await shown()).toEqual([15, 15]);
    await page.setViewportSize({ width: 900, height: 900 });
    expect(await shown()).toEqual([15, 0]);
    await page.close();
  });

  it("leads from the table to the reasons and from the contents to each part", async () => {
    const { page } = await open(browser, address("sampleKitchen"));
    await page.locator(".grouped tbody a").nth(1).click();
    expect(page.url()).toContain("#set-up-2");
    const top = await page.evaluate(
      () => document.querySelector("#set-up-2")!.getBoundingClientRect().top,
    );
    expect(Math.abs(top)).toBeLessThan(5);
    await page.close();
  });

  it("makes no element of a hostile name, and shows the name as text", async () => {
    const { page, complaints } = await open(browser, address("hostileKitchen"));
    expect(await page.locator("script, img, svg[onload], [onerror]").count()).toBe(0);
    expect(await page.locator("body").innerText()).toContain(hostileNames[0]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("prints light, all of it unfolded, with no answer and no chart torn or taller than a sheet", async () => {
    const { page } = await open(browser, address("sampleKitchen"), { scheme: "dark", width: 680 });
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    const boxes = await page.evaluate(() =>
      [...document.querySelectorAll("figure, .answer, .by-appliance > li")].map((element) => ({
        height: element.getBoundingClientRect().height,
        inside: getComputedStyle(element).breakInside,
      })),
    );
    expect(boxes.length).toBeGreaterThan(30);
    // A4 less its margins: 297 - 2 x 16 mm at 96 px per inch.
    for (const { height, inside } of boxes) {
      expect(inside).toBe("avoid");
      expect(height).toBeLessThan(((297 - 32) / 25.4) * 96);
    }
    const folded = await page.evaluate(() =>
      [...document.querySelectorAll("details table")].map((table) => table.checkVisibility()),
    );
    expect(folded.length).toBeGreaterThan(10);
    expect(folded).not.toContain(false);
    const ink = await page.evaluate(() => getComputedStyle(document.body).color);
    expect(ink.match(/\d+/g)!.map(Number)[0]).toBeLessThan(40);
    await page.close();
  }, 60_000);
});
