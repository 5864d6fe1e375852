/** How long the page takes from a chosen file to the verdict, and how long its screen stands still. */
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { browserPath, launch } from "../report/browser.ts";

const address = pathToFileURL(
  join(fileURLToPath(new URL("../../", import.meta.url)), "dist", "page.html"),
).href;

export interface PageTimes {
  /** From the press of the button to the answer in the document, seconds. */
  readonly verdict: number;
  /** Longest time without a new frame meanwhile, seconds. */
  readonly longestStill: number;
}

/** Runs in the page: presses, waits for the answer, counts frames meanwhile. */
const timed = (): Promise<PageTimes> =>
  new Promise((resolve) => {
    const start = performance.now();
    let last = start;
    let longest = 0;
    const frame = (): void => {
      const now = performance.now();
      longest = Math.max(longest, now - last);
      last = now;
      if (document.getElementById("night-answer") === null) requestAnimationFrame(frame);
      else resolve({ verdict: (now - start) / 1000, longestStill: longest / 1000 });
    };
    requestAnimationFrame(frame);
    const button = [...document.querySelectorAll("button")].find(
      ({ textContent }) => textContent === "Read the night",
    );
    button?.click();
  });

const oneRun = async (page: Page, file: string): Promise<PageTimes> => {
  await page.goto(address);
  await page.getByLabel("The logger’s files", { exact: true }).setInputFiles(file);
  await page.getByLabel("Culture", { exact: true }).selectOption("reuteri");
  return page.evaluate(timed);
};

/** Median of some runs; null where there is no browser. */
export const timePage = async (file: string, runs: number): Promise<PageTimes | null> => {
  if (browserPath === undefined) return null;
  const browser = await launch();
  const page = await browser.newPage();
  page.setDefaultTimeout(120_000);
  // The loader of TypeScript names functions by a helper that the page does not have.
  await page.addInitScript("globalThis.__name = (one) => one");
  const found: PageTimes[] = [];
  for (let run = 0; run < runs; run += 1) {
    // oxlint-disable-next-line no-await-in-loop -- two at once would only slow each other
    found.push(await oneRun(page, file));
  }
  await browser.close();
  const sorted = found.toSorted((a, b) => a.verdict - b.verdict);
  return sorted[Math.floor(runs / 2)] ?? null;
};
