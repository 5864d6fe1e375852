/** The page as it is built, opened in Chromium from a file's address, and what one does on it. */
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Browser, BrowserContext, Locator, Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { buildPage } from "../../src/build/page.ts";
import { launch } from "../report/browser.ts";

export const root = fileURLToPath(new URL("../../", import.meta.url));
export const reading = (name: string): string =>
  join(root, "fixtures", "kitchen", "readings", name);

const builtPage = async (): Promise<{
  readonly folder: string;
  readonly address: string;
}> => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-page-"));
  const file = join(folder, "page.html");
  writeFileSync(file, (await buildPage(root, "0.0.0")).html);
  return { folder, address: pathToFileURL(file).href };
};

/** The demo's kitchen.yaml and all its readings. */
export const demoFiles: readonly string[] = [
  join(root, "fixtures", "kitchen", "kitchen.yaml"),
  ...readdirSync(join(root, "fixtures", "kitchen", "readings")).map(reading),
];

export interface PageUnderTest {
  readonly browser: Browser;
  /** A folder of the test's own, gone afterwards. */
  readonly folder: string;
  readonly address: string;
}

/** Builds the page and starts a browser once for all tests of a `describe`; to be called in its body. */
export const pageUnderTest = (): (() => PageUnderTest) => {
  let found: PageUnderTest | null = null;
  beforeAll(async () => {
    found = { ...(await builtPage()), browser: await launch() };
  }, 60_000);
  afterAll(async () => {
    await found?.browser.close();
    if (found !== null) rmSync(found.folder, { recursive: true });
  });
  return () => {
    if (found === null) throw new Error("asked before the page was built");
    return found;
  };
};

/** Whoever visits the page: one browser profile, in which it keeps what it keeps. */
export interface Visitor {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly complaints: readonly string[];
  readonly requests: readonly string[];
}

const watch = async (context: BrowserContext, address: string): Promise<Visitor> => {
  const page = await context.newPage();
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("request", (request) => {
    const own = request.url() === address || request.url().startsWith("blob:");
    if (!own) requests.push(request.url());
  });
  await page.goto(address);
  await page.locator("main button").first().waitFor();
  return { page, context, complaints, requests };
};

export const visit = async (
  { browser, address }: PageUnderTest,
  options: { readonly width?: number; readonly scheme?: "light" | "dark" } = {},
): Promise<Visitor> => {
  const context = await browser.newContext({
    viewport: { width: options.width ?? 1280, height: 900 },
    colorScheme: options.scheme ?? "light",
    acceptDownloads: true,
  });
  return watch(context, address);
};

/** The same browser on another day. */
export const visitAgain = (before: Visitor, { address }: PageUnderTest): Promise<Visitor> =>
  watch(before.context, address);

export const view = (page: Page, name: string): Promise<void> =>
  page
    .getByRole("navigation", { name: "Parts of this page" })
    .getByRole("button", { name })
    .click();

export const press = (page: Page | Locator, name: string): Promise<void> =>
  page.getByRole("button", { name, exact: true }).click();

/** Fields by their labels: text is filled in, a choice is chosen by its words. */
export const fill = async (
  form: Page | Locator,
  fields: Readonly<Record<string, string>>,
): Promise<void> => {
  for (const [label, value] of Object.entries(fields)) {
    const field = form.getByLabel(label, { exact: true });
    // oxlint-disable-next-line no-await-in-loop -- a choice decides which fields come next
    const tag = await field.evaluate(({ tagName }) => tagName);
    // oxlint-disable-next-line no-await-in-loop
    await (tag === "SELECT" ? field.selectOption({ label: value }) : field.fill(value));
  }
};

export const section = (page: Page, name: string): Locator =>
  page.getByRole("region", { name, exact: true });

/** What the page told last. */
export const told = (page: Page): Locator => page.getByRole("status");

/** Presses a button that saves; gives the file's suggested name and bytes. */
export const saved = async (
  page: Page,
  name: string,
): Promise<{ readonly name: string; readonly bytes: Buffer; readonly path: string }> => {
  const waiting = page.waitForEvent("download");
  await press(page, name);
  const download = await waiting;
  const path = await download.path();
  return { name: download.suggestedFilename(), bytes: readFileSync(path), path };
};
