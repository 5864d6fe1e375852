/** Both reports to a screen reader and a keyboard: headings, landmarks, language, words for pictures, the way of Tab. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toHtml } from "../../src/report/html.ts";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { launch, noBrowser, open, unfold } from "./browser.ts";
import { demoKitchen, demoNight } from "./demo-kitchen.ts";
import { unprovenNight } from "./sample-analysis.ts";
import { sampleKitchen } from "./sample-kitchen.ts";

const rendered = { renderedOn: "2026-11-20" };
const reports = {
  demoNight: async () => toHtml(await demoNight(), rendered),
  unprovenNight: () => toHtml(unprovenNight(), rendered),
  demoKitchen: async () => toKitchenHtml(await demoKitchen(), rendered),
  sampleKitchen: () => toKitchenHtml(sampleKitchen(), rendered),
};

/** What Tab should reach, in the order in which it is written. */
const stops = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("a[href], summary, button, input, [tabindex]")]
      .filter((element) => element.checkVisibility())
      .map((element, at) => {
        element.dataset["stop"] = String(at);
        return `${at} ${element.textContent.slice(0, 30)}`;
      }),
  );

/** Where Tab leads, from the top to where it leaves the page. */
const walked = async (page: Page, most: number): Promise<string[]> => {
  const found: string[] = [];
  for (let at = 0; at < most; at += 1) {
    // One key after the other.
    // oxlint-disable-next-line no-await-in-loop
    await page.keyboard.press("Tab");
    // oxlint-disable-next-line no-await-in-loop
    const stop = await page.evaluate(() => {
      const element = document.activeElement as HTMLElement;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const seen = outlineStyle !== "none" && Number.parseFloat(outlineWidth) > 0;
      return `${element.dataset["stop"]} ${element.textContent.slice(0, 30)}${seen ? "" : ", unseen"}`;
    });
    found.push(stop);
  }
  return found;
};

describe.skipIf(noBrowser()).each(Object.keys(reports) as (keyof typeof reports)[])(
  "%s",
  (name) => {
    const folder = mkdtempSync(join(tmpdir(), "holdband-structure-"));
    const file = join(folder, "report.html");
    let browser: Browser;
    let page: Page;

    beforeAll(async () => {
      writeFileSync(file, await reports[name]());
      browser = await launch();
      ({ page } = await open(browser, pathToFileURL(file).href));
    }, 60_000);
    afterAll(async () => {
      await browser.close();
      rmSync(folder, { recursive: true });
    });

    it("says its language, and has a title", async () => {
      expect(await page.evaluate(() => document.documentElement.lang)).toBe("en");
      expect((await page.title()).length).toBeGreaterThan(5);
    });

    it("has one heading of the first level and skips none below", async () => {
      const levels = await page.evaluate(() =>
        [...document.querySelectorAll("h1, h2, h3, h4, h5, h6")].map((heading) => ({
          level: Number(heading.localName.slice(1)),
          words: heading.textContent.trim(),
        })),
      );
      expect(levels.length).toBeGreaterThan(8);
      expect(levels.filter(({ level }) => level === 1).length).toBe(1);
      expect(levels[0]!.level).toBe(1);
      expect(levels.filter(({ words }) => words === "")).toEqual([]);
      const jumps = levels.filter(({ level }, at) => level > (levels[at - 1]?.level ?? 0) + 1);
      expect(jumps).toEqual([]);
    });

    it("has its landmarks once each, and named where there may be more", async () => {
      const tree = await page.locator("body").ariaSnapshot();
      for (const role of ["banner", "main", "contentinfo"]) {
        expect(tree.match(new RegExp(`^\\s*- ${role}:?$`, "gm")), role).toHaveLength(1);
      }
      expect(tree).not.toMatch(/^\s*- (?:navigation|region):?$/m);
      if (name.endsWith("Kitchen")) expect(tree).toMatch(/^\s*- navigation "[^"]+":?$/m);
    });

    it("gives every picture a title and words with a temperature, or hides it as decoration", async () => {
      const pictures = await page.evaluate(() =>
        [...document.querySelectorAll("svg")].map((svg) => {
          const said = (element: string) =>
            svg.querySelector(`:scope > ${element}`)?.textContent ?? "";
          const named = (svg.getAttribute("aria-labelledby") ?? "")
            .split(" ")
            .map((id) => document.querySelector(`[id="${id}"]`)?.textContent);
          return {
            hidden: svg.getAttribute("aria-hidden") === "true",
            role: svg.getAttribute("role"),
            title: said("title"),
            words: said("desc"),
            labelled: named.join(" ") === `${said("title")} ${said("desc")}`,
          };
        }),
      );
      const shown = pictures.filter(({ hidden }) => !hidden);
      expect(shown.length).toBeGreaterThan(3);
      const temperature = /\d(?:[.,]\d+)?[\s\u00a0]°[CF]/;
      const wordless = shown.filter(
        ({ role, title, words, labelled }) =>
          role !== "img" || title.length < 5 || !temperature.test(words) || !labelled,
      );
      expect(wordless).toEqual([]);
    });

    it("is walked by Tab, stop by stop in the order it is written, each stop to be seen", async () => {
      const order = await stops(page);
      expect(order.length).toBeGreaterThan(3);
      expect(await walked(page, order.length)).toEqual(order);
    });

    it("unfolds by Enter, and its insides are then reached too", async () => {
      await page.reload();
      await page.locator("summary").first().focus();
      await page.keyboard.press("Enter");
      expect(await page.locator("details").first().getAttribute("open")).not.toBeNull();
      await unfold(page);
      await page.evaluate(() => (document.activeElement as HTMLElement).blur());
      await page.reload();
      await unfold(page);
      const order = await stops(page);
      expect(await walked(page, order.length)).toEqual(order);
    });
  },
);
