/** The page with a kitchen in it: accessible, in bounds, usable by keys alone, deaf to hostile names, never frozen. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { axeFindings, noBrowser } from "../report/browser.ts";
import {
  demoFiles,
  pageUnderTest,
  fill,
  press,
  reading,
  root,
  section,
  told,
  view,
  visit,
} from "./built-page.ts";

const demo = join(root, "fixtures", "kitchen");
const openKitchen = async (page: Page, files: readonly string[]): Promise<void> => {
  await view(page, "Files");
  await page
    .getByLabel("kitchen.yaml, its readings, or a zipped kitchen", { exact: true })
    .setInputFiles(files);
  await told(page).getByText("Opened kitchen.yaml").waitFor();
};

const beyond = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth - clientWidth;
  });

const expectInOrder = async (page: Page, where: string): Promise<void> => {
  const { violations, passed } = await axeFindings(page);
  expect(violations, where).toEqual([]);
  expect(passed, where).toBeGreaterThan(15);
  expect(await beyond(page), where).toBe(0);
};

/** Tabs on until what has the keyboard is called so; fails after too many. */
const tabTo = async (page: Page, name: string): Promise<void> => {
  for (let pressed = 0; pressed < 60; pressed += 1) {
    // oxlint-disable-next-line no-await-in-loop -- one key after the other
    await page.keyboard.press("Tab");
    // oxlint-disable-next-line no-await-in-loop
    const found = await page.evaluate(() => {
      const at = document.activeElement;
      const label =
        at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? at.labels?.[0] : at;
      return label?.textContent?.trim() ?? "";
    });
    if (found === name) return;
  }
  throw new Error(`The keyboard never came to "${name}".`);
};

describe.skipIf(noBrowser())("the page in use", () => {
  const under = pageUnderTest();

  it.each([
    ["light", 360],
    ["dark", 1280],
  ] as const)(
    "has no violation axe can find with a kitchen open: %s, %i px",
    async (scheme, width) => {
      const { page, context } = await visit(under(), { scheme, width });
      await openKitchen(page, demoFiles);
      await expectInOrder(page, "files");
      await view(page, "Report");
      await page.getByRole("button", { name: "Save this report" }).waitFor();
      await expectInOrder(page, "report");
      await view(page, "My kitchen");
      for (const [title, add] of [
        ["Appliances", "Enter an appliance"],
        ["Thermometers", "Enter a thermometer"],
        ["Water tests", "Enter a water test"],
        ["Batches", "Log a batch"],
      ] as const) {
        // oxlint-disable-next-line no-await-in-loop -- one press after the other
        await press(section(page, title), add);
      }
      await press(section(page, "Thermometers"), "Enter it");
      await section(page, "Thermometers").getByRole("alert").waitFor();
      await expectInOrder(page, "forms");
      await context.close();
    },
  );

  it("can be used by keys alone", async () => {
    const { page, context } = await visit(under());
    await page
      .getByLabel("The logger’s files", { exact: true })
      .first()
      .setInputFiles(reading("adjustable-cooker.csv"));
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await tabTo(page, "To the page’s content");
    await tabTo(page, "Culture");
    await page.keyboard.type("Low long");
    await tabTo(page, "Read the night");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "What this water test shows" }).waitFor();
    const focused = await page.evaluate(() => document.activeElement?.textContent);
    expect(focused).toBe("What this water test shows");
    await context.close();
  });

  it("shows hostile names as text: of files, columns and everything in kitchen.yaml", async () => {
    const attack = "<img src=x onerror=document.title=1>";
    const { page, context, complaints, requests } = await visit(under(), { width: 360 });
    const csv = readFileSync(reading("adjustable-cooker.csv"), "utf8");
    const lines = csv.split("\n");
    const heading = lines.findIndex((line) => /Jar/.test(line));
    expect(heading).toBeGreaterThanOrEqual(0);
    lines[heading] = (lines[heading] ?? "").replace("Jar", `Jar ${attack}`);
    const content = Buffer.from(lines.join("\n"));
    await page
      .getByLabel("The logger’s files", { exact: true })
      .first()
      .setInputFiles({
        name: `${attack.replaceAll("/", "")}.csv`,
        mimeType: "text/csv",
        buffer: content,
      });
    await fill(page, { Culture: "Low long-hold milk culture (Limosilactobacillus reuteri)" });
    await press(page, "Read the night");
    await page.getByRole("heading", { name: "What this water test shows" }).waitFor();
    expect(await page.getByRole("main").innerText()).toContain("onerror");
    expect(await beyond(page)).toBe(0);

    const yaml = readFileSync(join(demo, "kitchen.yaml"), "utf8").replaceAll(
      /^(\s+(?:name|notes|fill): ).*$/gmu,
      (_, start: string) => `${start}${JSON.stringify(attack)}`,
    );
    expect(yaml).toContain("onerror");
    writeFileSync(join(under().folder, "kitchen.yaml"), yaml);
    await openKitchen(page, [join(under().folder, "kitchen.yaml"), ...demoFiles.slice(1)]);
    await view(page, "My kitchen");
    await expect.poll(() => page.getByRole("main").innerText()).toContain("onerror");
    expect(await beyond(page)).toBe(0);
    await view(page, "Report");
    await page.getByRole("button", { name: "Save this report" }).waitFor();
    expect(await page.title()).toBe("holdband");
    expect(await page.locator("img").count()).toBe(0);
    expect([complaints, requests]).toEqual([[], []]);
    await context.close();
  });

  it("goes on while a long file is read, says how far it is, and stops when asked", async () => {
    const file = join(under().folder, "long.csv");
    const start = Date.UTC(2026, 0, 5, 20);
    const rows = Array.from({ length: 1_500_000 }, (_, at) => {
      const stamp = new Date(start + at * 1000).toISOString().slice(0, 19);
      return `${stamp},${(38 + (at % 7) / 50).toFixed(2)}`;
    });
    writeFileSync(file, `Time,Jar (C)\n${rows.join("\n")}\n`);
    const { page, context } = await visit(under());
    await page.getByLabel("The logger’s files", { exact: true }).first().setInputFiles(file);
    await fill(page, { Culture: "Low long-hold milk culture (Limosilactobacillus reuteri)" });
    await press(page, "Read the night");
    await page.getByText(/\d of \d+\.\d MB read/).waitFor();
    // The screen answers while its worker reads.
    await view(page, "Files");
    await page.getByRole("heading", { level: 1, name: "Files" }).waitFor();
    expect(await page.getByRole("progressbar").count()).toBe(1);
    await press(page, "Stop");
    await page.getByRole("progressbar").waitFor({ state: "detached" });
    await view(page, "One night");
    await page.getByText("Stopped before").waitFor();
    await context.close();
  });
});
