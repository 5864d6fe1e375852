/** One night in the page against the same night through the command line. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { holdband } from "../cli/run-holdband.ts";
import { noBrowser } from "../report/browser.ts";
import { pageUnderTest, fill, press, reading, saved, told, visit } from "./built-page.ts";

const lowCulture = "Low long-hold milk culture (Limosilactobacillus reuteri)";

/** Without what differs by its nature: which build answered, and where its file lay. */
const figures = (json: string): unknown => ({ ...JSON.parse(json), holdband: "" });

/** Without when it was made, and by which version. */
const dated = (text: string): string =>
  text.replaceAll(/\d{4}-\d\d-\d\d,? \d\d:\d\d UTC by holdband [\d.]+|holdband \d+\.\d+\.\d+/g, "");

const choose = (page: Page, files: string | readonly string[]): Promise<void> =>
  page.getByLabel("The logger’s files", { exact: true }).setInputFiles(files);

describe.skipIf(noBrowser())("one night in the page", () => {
  const under = pageUnderTest();

  it.each([
    ["adjustable-cooker.csv", lowCulture, "reuteri"],
    ["warming-box.txt", "Yoghurt, short set (S. thermophilus, L. bulgaricus)", "yoghurt"],
    ["bath-water.tsv", lowCulture, "reuteri"],
  ])("gives for %s what the command line gives, field by field", async (file, name, id) => {
    const { page, context, complaints, requests } = await visit(under());
    await choose(page, reading(file));
    await fill(page, { Culture: name });
    await press(page, "Read the night");
    await page.getByRole("heading", { name: "What this water test shows" }).waitFor();
    const json = await saved(page, "Save the figures as JSON");
    const typed = holdband(["check", reading(file), "--culture", id, "--json"]);
    expect(figures(json.bytes.toString())).toEqual(figures(typed.out));
    expect([complaints, requests]).toEqual([[], []]);
    await context.close();
  });

  it("heeds every option as the command line does", async () => {
    const { page, context } = await visit(under());
    await choose(page, reading("adjustable-cooker.csv"));
    await fill(page, {
      Culture: "a window of my own",
      "Lowest temperature of its window": "98F",
      "Highest temperature of its window": "103F",
      "Ceiling: never above": "109F",
      "How long it stays in": "24h",
      "What is known of the thermometer or logger": "its correction, from a certificate",
      "What to add to each reading": "-0.4",
      "Standard uncertainty of that": "0.1",
    });
    await page.getByText("More", { exact: true }).click();
    await fill(page, {
      "Room temperatures a batch may meet": "17..25",
      "Standard deviation from one run to the next": "0.2",
      "Part of the hours that must lie inside": "90%",
      "How sure “holds” must be": "0.9",
    });
    await press(page, "Read the night");
    await page.getByRole("heading", { name: "What this water test shows" }).waitFor();
    const json = await saved(page, "Save the figures as JSON");
    const typed = holdband(
      ["check", reading("adjustable-cooker.csv"), "--json"].concat(
        ["--low", "98F", "--high", "103F", "--ceiling", "109F", "--hours", "24h"],
        ["--correction", "-0.4", "--correction-uncertainty", "0.1", "--room", "17..25"],
        ["--run-to-run", "0.2", "--share", "90%", "--confidence", "0.9"],
      ),
    );
    expect(figures(json.bytes.toString())).toEqual(figures(typed.out));
    await context.close();
  });

  it("says a mistake at the field, in the command line's words", async () => {
    const { page, context } = await visit(under());
    await choose(page, reading("adjustable-cooker.csv"));
    await fill(page, { Culture: "a window of my own" });
    await fill(page, { "Lowest temperature of its window": "warm" });
    await fill(page, { "Highest temperature of its window": "39" });
    await fill(page, { "How long it stays in": "36" });
    await press(page, "Read the night");
    const low = page.getByLabel("Lowest temperature of its window", { exact: true });
    await expect.poll(() => low.getAttribute("aria-invalid")).toBe("true");
    const ids = (await low.getAttribute("aria-describedby"))?.split(" ") ?? [];
    const shown = await page.locator(`#${ids.at(-1)}`).textContent();
    const typed = holdband([
      "check",
      reading("adjustable-cooker.csv"),
      "--low",
      "warm",
      "--high",
      "39",
      "--hours",
      "36",
    ]);
    expect(shown).toBe(typed.err.replace("--low", "“Lowest temperature of its window”").trim());
    expect(await low.evaluate((field) => field === document.activeElement)).toBe(true);
    await context.close();
  });

  it("asks which way round the days are, at the field that says it", async () => {
    const file = join(under().folder, "either.csv");
    const rows = Array.from(
      { length: 12 },
      (_, at) => `03/04/2026 1${Math.floor(at / 6)}:${at % 6}0,38.${at % 3}`,
    );
    writeFileSync(file, ["Time,Jar (C)", ...rows].join("\n"));
    const { page, context } = await visit(under());
    await choose(page, file);
    await fill(page, { Culture: lowCulture });
    await press(page, "Read the night");
    const order = page.getByLabel("Order of day and month", { exact: true });
    await order.waitFor({ state: "visible" });
    expect(await order.getAttribute("aria-invalid")).toBe("true");
    await fill(page, { "Order of day and month": "day-first" });
    await press(page, "Read the night");
    await page.getByRole("heading", { name: "What this water test shows" }).waitFor();
    await context.close();
  });

  it("takes typed readings as the command line does, and gives them back as CSV", async () => {
    const { page, context } = await visit(under());
    const lines = Array.from(
      { length: 14 },
      (_, at) => `${String((20 + at) % 24).padStart(2, "0")}:00 ${38 + (at % 3) / 10}`,
    );
    await page.getByLabel("typed by hand", { exact: true }).check();
    await page.getByLabel("Readings, one on each line", { exact: true }).fill(lines.join("\n"));
    await fill(page, { Culture: lowCulture, "Day of the first reading": "2026-10-03" });
    await press(page, "Read the night");
    await page.getByRole("heading", { name: "What this water test shows" }).waitFor();
    const csv = await saved(page, "Save the readings as CSV");
    const out = join(under().folder, "typed.csv");
    const written = holdband(["enter", "--out", out, "--date", "2026-10-03"], {
      input: lines.join("\n"),
    });
    expect(written.exitCode).toBe(0);
    expect(csv.bytes.toString()).toBe(readFileSync(out, "utf8"));
    await context.close();
  });

  it("says which typed line cannot be read, beside the lines", async () => {
    const { page, context } = await visit(under());
    await page.getByLabel("typed by hand", { exact: true }).check();
    const lines = page.getByLabel("Readings, one on each line", { exact: true });
    await lines.fill("22:30 41.2\n22:45 warm");
    await fill(page, { Culture: lowCulture });
    await press(page, "Read the night");
    await expect.poll(() => lines.getAttribute("aria-invalid")).toBe("true");
    const ids = (await lines.getAttribute("aria-describedby"))?.split(" ") ?? [];
    expect(await page.locator(`#${ids.at(-1)}`).textContent()).toContain("ine 2");
    await context.close();
  });

  it("saves the report that the command line would write", async () => {
    const { page, context } = await visit(under());
    await choose(page, reading("adjustable-cooker.csv"));
    await fill(page, { Culture: lowCulture });
    await press(page, "Read the night");
    await told(page).getByText("This set-up").waitFor();
    const html = (await saved(page, "Save this report")).bytes.toString();
    const out = join(under().folder, "night.html");
    holdband(["check", reading("adjustable-cooker.csv"), "--culture", "reuteri", "--report", out]);
    expect(dated(html)).toBe(dated(readFileSync(out, "utf8")));
    await context.close();
  });

  it("corrects the night by what the thermometer showed in ice and boiling water", async () => {
    const { page, context } = await visit(under());
    await choose(page, reading("adjustable-cooker.csv"));
    await fill(page, {
      Culture: lowCulture,
      "What is known of the thermometer or logger": "I checked it in ice or boiling water",
      "What it showed in melting ice": "0.5 0.5",
      "What it showed in boiling water": "95.8 95.8",
    });
    await press(page, "Read the night");
    const height = page.getByLabel("Height above sea level where it boiled", { exact: true });
    await expect.poll(() => height.getAttribute("aria-invalid")).toBe("true");
    await height.fill("1450m");
    await press(page, "Read the night");
    await page.getByRole("heading", { name: "What this water test shows" }).waitFor();
    const [probe] = JSON.parse(
      (await saved(page, "Save the figures as JSON")).bytes.toString(),
    ).probes;
    const plain = holdband([
      "check",
      reading("adjustable-cooker.csv"),
      "--culture",
      "reuteri",
      "--json",
    ]);
    const [raw] = JSON.parse(plain.out).probes;
    expect(probe.thermometer.from).toBe("measured");
    // By hand: ice is 0 degC and showed 0.5; at 1450 m the air has 850.8 hPa (US Standard Atmosphere
    // 1976), where water boils at 95.16 degC (IAPWS-IF97), and it showed 95.8. Between them, at 38 degC,
    // it shows 0.5 + 0.14 x 38 / 95.3 = 0.556 too much; tolerance: the last place of these figures.
    expect(probe.hold.mean - raw.hold.mean).toBeCloseTo(-0.556, 2);
    await context.close();
  });
});
