/** Both reports on paper: how many sheets, none torn or near empty, nothing folded away, nothing told by colour alone. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toHtml } from "../../src/report/html.ts";
import { toKitchenHtml } from "../../src/report/kitchen-html.ts";
import { launch, noBrowser, open } from "./browser.ts";
import { demoKitchen, demoNight } from "./demo-kitchen.ts";
import { markEnds, pixelImages, readSheets, splitMarks } from "./printed.ts";

const rendered = { renderedOn: "2026-11-20" };

/** Sheets at most: what the demo takes now and a little more. */
const most = {
  night: { A4: 9, Letter: 9 },
  kitchen: { A4: 43, Letter: 46 },
} as const;
type Report = keyof typeof most;
type Paper = keyof (typeof most)[Report];

const whole = "figure, .answer, .advice > li, .by-appliance > li";
const blocks = "h1, h2, h3, h4, p, li, tr, dd, figure";

/** Its figure begins 80 % down the first sheet and takes 40 % of one. */
const constructed = (inside: "auto" | "avoid"): string =>
  `<!doctype html><title>t</title><style>@page { size: 100mm 200mm; margin: 0 } body { margin: 0 }
   div { height: 160mm } figure { margin: 0; height: 80mm; break-inside: ${inside} } p { margin: 0; height: 20mm }</style>
   <div>above</div><figure>${"<p>line</p>".repeat(4)}</figure>`;

describe.skipIf(noBrowser())("reports printed by Chromium", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-print-"));
  let browser: Browser;

  const write = (name: string, html: string): void => writeFileSync(join(folder, name), html);
  const openPrinted = async (name: string): Promise<Page> => {
    const { page } = await open(browser, pathToFileURL(join(folder, `${name}.html`)).href);
    await page.emulateMedia({ media: "print" });
    return page;
  };
  /** The sheets of a report, with every element of a selector marked. */
  const print = async (name: string, format: Paper, selector: string) => {
    const page = await openPrinted(name);
    const names = await markEnds(page, selector);
    const sheets = readSheets(await page.pdf({ format }));
    await page.close();
    return { names, sheets };
  };

  beforeAll(async () => {
    write("night.html", await toHtml(await demoNight(), rendered));
    write("kitchen.html", await toKitchenHtml(await demoKitchen(), rendered));
    browser = await launch();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  describe.each([
    ["night", "A4"],
    ["night", "Letter"],
    ["kitchen", "A4"],
    ["kitchen", "Letter"],
  ] as const)("%s on %s", (name, format) => {
    it("takes no more sheets than stated, and tears no chart and no answer", async () => {
      const { names, sheets } = await print(name, format, whole);
      expect(sheets.length).toBeGreaterThan(3);
      expect(sheets.length).toBeLessThanOrEqual(most[name][format]);
      expect(names.length).toBeGreaterThan(5);
      expect(splitMarks(sheets, names.length).map((at) => names[at])).toEqual([]);
    }, 60_000);

    it("leaves no sheet near empty", async () => {
      const { sheets } = await print(name, format, blocks);
      // A text must end somewhere: the last sheet may be short, but bears something.
      for (const { letters, usedTo } of sheets.slice(0, -1)) {
        expect(letters).toBeGreaterThan(150);
        expect(usedTo).toBeGreaterThan(0.3);
      }
      expect(sheets.at(-1)!.letters).toBeGreaterThan(15);
    }, 60_000);
  });

  it.each(["night", "kitchen"] as const)("%s: shows all that is folded", async (name) => {
    const page = await openPrinted(name);
    const rows = await page.locator("details tr, details p, details li").count();
    await page.close();
    expect(rows).toBeGreaterThan(15);
    const { names, sheets } = await print(name, "A4", "details tr, details p, details li");
    expect(names.length).toBe(rows);
    const landed = new Set(sheets.flatMap(({ tops }) => tops));
    expect(names.filter((_, at) => !landed.has(at))).toEqual([]);
  });

  it("has every picture in a figure, whose ends were looked for", async () => {
    const page = await openPrinted("kitchen");
    expect(await page.locator('svg[role="img"]').count()).toBeGreaterThan(20);
    expect(await page.locator('svg[role="img"]:not(figure *)').count()).toBe(0);
    await page.close();
  });

  it("draws charts as lines on paper, never as pixels", async () => {
    const page = await openPrinted("kitchen");
    expect(await page.locator('[id*="-hatch"]').count()).toBeGreaterThan(10);
    expect(pixelImages(await page.pdf({ format: "A4" }))).toBe(0);
    await page.close();
    // Chromium turns a pattern's tiles into pixels, so it would be noticed.
    const tile = `<pattern id="a" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 0L8 8" stroke="#000"/></pattern>`;
    const box = `<svg width="90" height="90">${tile}<rect width="90" height="90" fill="url(#a)"/></svg>`;
    write("tiles.html", `<!doctype html><title>t</title>${box}`);
    const tiles = await openPrinted("tiles");
    expect(pixelImages(await tiles.pdf({ format: "A4" }))).toBeGreaterThan(0);
    await tiles.close();
  });

  it.each(["light", "dark"] as const)(
    "parts verdicts in grey, from a %s screen",
    async (scheme) => {
      const page = await openPrinted("kitchen");
      await page.emulateMedia({ media: "print", colorScheme: scheme });
      const looks = await page.evaluate(() =>
        ["holds", "misses", "unproven"].map((verdict) => {
          const mark = document.querySelector(`.${verdict} .mark`)!;
          const { borderTopStyle, backgroundColor } = getComputedStyle(mark);
          const filled = backgroundColor !== "rgba(0, 0, 0, 0)";
          const text = mark.textContent.trim().toLowerCase();
          return { text, look: `${borderTopStyle} ${filled ? "filled" : "open"}` };
        }),
      );
      expect(looks.map(({ text }) => text)).toEqual(["holds", "misses", "unproven"]);
      expect(new Set(looks.map(({ look }) => look)).size).toBe(3);
      await page.close();
    },
  );

  describe("a constructed page", () => {
    it.each([
      ["auto", [0]],
      ["avoid", []],
    ] as const)("whose figure may break: %s, is found torn: %j", async (inside, torn) => {
      write(`${inside}.html`, constructed(inside));
      const page = await openPrinted(inside);
      const names = await markEnds(page, "figure");
      const sheets = readSheets(await page.pdf({ preferCSSPageSize: true }));
      await page.close();
      expect(sheets.length).toBe(2);
      expect(splitMarks(sheets, names.length)).toEqual(torn);
      // Torn, its lower half stands at the top of the second sheet; whole, all of it does.
      expect(sheets[1]!.usedTo).toBeCloseTo(inside === "auto" ? 0.2 : 0.4, 1);
      expect(sheets[0]!.letters).toBe("above".length + (inside === "auto" ? 2 * "line".length : 0));
    });

    it("counts a sheet with nothing on it as empty", async () => {
      write(
        "blank.html",
        `<!doctype html><title>t</title><p>one</p><p style="break-before: page">`,
      );
      const page = await openPrinted("blank");
      const sheets = readSheets(await page.pdf({ format: "A4" }));
      await page.close();
      expect(sheets.map(({ letters }) => letters)).toEqual([3, 0]);
    });
  });
});
