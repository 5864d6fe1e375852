/** Hostile names in Chromium: they stay text, run nothing, and push nothing off a phone's screen. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cleanText } from "../../src/report/clean-text.ts";
import { toHtml } from "../../src/report/html.ts";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { launch, noBrowser, open, unfold } from "./browser.ts";
import { attacks, fileAttacks, harmless, hostileKitchen, hostileNight, places } from "./hostile.ts";

const rendered = { renderedOn: "2026-06-01" };
const reports = {
  night: async (name: string) => toHtml(await hostileNight(name), rendered),
  kitchen: async (name: string) => toKitchenHtml(await hostileKitchen(name), rendered),
};

/** What the page is made of: its kinds of elements with the names of their attributes. */
const parts = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...new Set(
      [...document.querySelectorAll("*")].flatMap((element) =>
        [...element.attributes, { name: "" }].map(({ name }) => `${element.localName} ${name}`),
      ),
    ),
  ]);

/** Addresses of links that lead elsewhere than within the page. */
const addresses = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll("[href], [src]")]
      .map((element) => element.getAttribute("href") ?? "src")
      .filter((address) => !/^#[\w-]+$/.test(address)),
  );

/** All text, that of pictures' descriptions too, spaces made plain. */
const textOf = (page: Page): Promise<string> =>
  page.evaluate(() => document.documentElement.textContent.replaceAll(/\s+/g, " "));

const shown = (name: string): string => cleanText(name).replaceAll(/\s+/g, " ").trim();

describe.skipIf(noBrowser())("hostile names in Chromium", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-hostile-"));
  let browser: Browser;
  const usual = new Map<string, ReadonlySet<string>>();

  const openReport = async (kind: keyof typeof reports, name: string) => {
    const file = join(folder, "report.html");
    writeFileSync(file, await reports[kind](name));
    const opened = await open(browser, pathToFileURL(file).href, { width: 360 });
    await unfold(opened.page);
    return opened;
  };

  beforeAll(async () => {
    browser = await launch();
    for (const kind of ["night", "kitchen"] as const) {
      // One browser, one file: one after the other.
      // oxlint-disable-next-line no-await-in-loop
      const { page } = await openReport(kind, harmless);
      // oxlint-disable-next-line no-await-in-loop
      usual.set(kind, new Set(await parts(page)));
      // oxlint-disable-next-line no-await-in-loop
      await page.close();
    }
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  describe.each([
    ...Object.keys(fileAttacks).map((name) => ["night", name] as const),
    ...Object.keys(attacks).map((name) => ["kitchen", name] as const),
  ])("%s: %s", (kind, which) => {
    const name = fileAttacks[which as keyof typeof fileAttacks];

    it("stays text, runs nothing, and fits a phone", async () => {
      const { page, requests, complaints } = await openReport(kind, name);
      expect((await parts(page)).filter((part) => !usual.get(kind)!.has(part))).toEqual([]);
      expect(await addresses(page)).toEqual([]);
      expect(requests).toEqual([]);
      expect(complaints).toEqual([]);
      const text = await textOf(page);
      const called =
        kind === "night"
          ? [`${name} jar`, `${name} bath`, `${name} remark`, `${name}.csv`, name]
          : Object.values(places).map((place) => `${name} ${place}`);
      expect(called.filter((one) => !text.includes(shown(one)))).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
      await page.close();
    }, 60_000);
  });
});
