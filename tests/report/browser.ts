/** Chromium for the tests that need a real page. Without one they are skipped aloud, and fail in CI. */
import { existsSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";

const candidates = [
  process.env["CHROMIUM"],
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

export const browserPath = candidates.find(
  (path): path is string => path !== undefined && path !== "" && existsSync(path),
);

/** True where browser tests should be skipped; says so, and refuses to in CI. */
export const noBrowser = (): boolean => {
  if (browserPath !== undefined) return false;
  if (process.env["CI"] === "true") throw new Error("No Chromium found: set CHROMIUM to its path.");
  console.warn("SKIPPED: no Chromium found, so the report was not opened in a browser.");
  return true;
};

export const launch = (): Promise<Browser> =>
  chromium.launch({
    executablePath: browserPath ?? "",
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });

export interface OpenedPage {
  readonly page: Page;
  /** Whatever the page asked for beyond its own file. */
  readonly requests: string[];
  /** Errors and policy violations the browser reported. */
  readonly complaints: string[];
}

/** Opens a file's address with everything it asks for and complains of written down. */
export const open = async (
  browser: Browser,
  address: string,
  options: { readonly width?: number; readonly scheme?: "light" | "dark" } = {},
): Promise<OpenedPage> => {
  const page = await browser.newPage({
    viewport: { width: options.width ?? 1280, height: 900 },
    colorScheme: options.scheme ?? "light",
  });
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => {
    if (request.url() !== address) requests.push(request.url());
  });
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("dialog", (dialog) => {
    complaints.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  await page.goto(address);
  return { page, requests, complaints };
};

/** Unfolds every part a reader could unfold, so that what stands in it is looked at too. */
export const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });

interface AxeResult {
  readonly passes: readonly unknown[];
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
}

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core"), "utf8");

/**
 * What axe finds wrong with a page, each with its first element, and how many
 * of its rules found something to look at: one that looked at nothing finds nothing.
 */
export const axeFindings = async (
  page: Page,
): Promise<{ readonly violations: string[]; readonly passed: number }> => {
  // The page's policy forbids scripts, so axe comes in by the debugger, as an extension would.
  await page.evaluate(axeSource);
  const { violations, passes } = (await page.evaluate("axe.run(document)")) as AxeResult;
  return {
    violations: violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`),
    passed: passes.length,
  };
};
