/** Chromium for the tests that need a real page. Without one they are skipped aloud, and fail in CI. */
import { existsSync } from "node:fs";
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
