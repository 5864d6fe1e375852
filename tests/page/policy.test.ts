/** The page as it is built, in Chromium from a file's address: nothing asked for, nothing complained of. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildPage } from "../../src/build/page.ts";
import { axeFindings, launch, noBrowser, open } from "../report/browser.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const night = join(root, "fixtures", "kitchen", "readings", "adjustable-cooker.csv");

/**
 * Runs text as code, later: what the debugger is asked for is exempt from the
 * policy, what a timer calls is not.
 */
const tryEval = `new Promise((resolve) => setTimeout(() => {
  try { resolve(String((0, eval)("1"))); } catch (error) { resolve(error.name); }
}, 0))`;

/** Before the worker's code: a worker's violations show in no console, so it writes them down. */
const notes = `self.violated = [];
addEventListener("securitypolicyviolation", ({ violatedDirective }) => violated.push(violatedDirective));
`;
const codeBegins = '<script type="text/plain" id="worker-code">';

const otherParts = ["My kitchen", "Report", "Files"];

const ready = (page: Page) => page.locator("main button").first().waitFor();

/** Each part of the page in turn, as it is with nothing entered. */
const inEachPart = async (page: Page, look: (part: string) => Promise<void>) => {
  for (const part of ["One night", ...otherParts]) {
    // oxlint-disable no-await-in-loop -- one after the other, as a person would
    await page.getByRole("button", { name: part, exact: true }).click();
    await look(part);
    // oxlint-enable no-await-in-loop
  }
};

describe.skipIf(noBrowser())("the page", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-page-"));
  const file = join(folder, "page.html");
  const address = pathToFileURL(file).href;
  let browser: Browser;

  beforeAll(async () => {
    const { html } = await buildPage(root, "0.0.0");
    expect(html.includes(codeBegins)).toBe(true);
    writeFileSync(file, html.replace(codeBegins, codeBegins + notes));
    browser = await launch();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  it("reads a night and shows its report without a request or a complaint", async () => {
    const { page, requests, complaints } = await open(browser, address);
    await ready(page);
    expect(page.workers()).toHaveLength(1);
    await page.locator('input[type="file"]').first().setInputFiles(night);
    await page.getByLabel("Culture", { exact: true }).first().selectOption("reuteri");
    await page.getByRole("button", { name: "Read the night" }).click();
    await page.locator("main svg").first().waitFor();
    for (const part of otherParts) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other, as a person would
      await page.getByRole("button", { name: part, exact: true }).click();
    }
    // The worker's own code is handed to it from the page, by a blob's address.
    expect(requests.filter((one) => !one.startsWith("blob:"))).toEqual([]);
    expect(complaints).toEqual([]);
    expect(await page.workers()[0]?.evaluate("violated")).toEqual([]);
    await page.close();
  });

  it("cannot run text as code, and neither can its worker", async () => {
    const { page } = await open(browser, address);
    await ready(page);
    expect(await page.evaluate(tryEval)).toBe("EvalError");
    expect(await page.workers()[0]?.evaluate(tryEval)).toBe("EvalError");
    expect(await page.workers()[0]?.evaluate("violated")).toEqual(["script-src"]);
    await page.close();
  });

  for (const scheme of ["light", "dark"] as const) {
    it.each([360, 768, 1280])(`has no violation axe can find: ${scheme}, %i px`, async (width) => {
      const { page } = await open(browser, address, { scheme, width });
      await ready(page);
      await inEachPart(page, async (part) => {
        const { violations, passed } = await axeFindings(page);
        expect(violations, part).toEqual([]);
        expect(passed, part).toBeGreaterThan(15);
        const beyond = await page.evaluate(() => {
          const { scrollWidth, clientWidth } = document.documentElement;
          return scrollWidth - clientWidth;
        });
        expect(beyond, part).toBe(0);
      });
      await page.close();
    });
  }
});
