import { mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkReportPath, writeReport } from "../../src/cli/report-file.ts";
import { pageHtml } from "../../src/build/page-html.ts";
import { problemText } from "../../src/problem.ts";
import type { Outcome } from "../../src/problem.ts";
import { htmlPage } from "../../src/report/html-page.ts";
import { listing, temporaryFolder, write } from "./run-holdband.ts";

const page = await htmlPage({ title: "Night", heading: "Night", byline: "", main: "" });
const textOf = (outcome: Outcome<void>): string => (outcome.ok ? "" : problemText(outcome.problem));

describe("checkReportPath", () => {
  it("leaves nothing behind where the path is good", async () => {
    const folder = temporaryFolder();
    expect((await checkReportPath(join(folder, "night.html"))).ok).toBe(true);
    expect(listing(folder)).toEqual([]);
  });

  it("lets an earlier report be replaced, and an empty file", async () => {
    const folder = temporaryFolder();
    expect((await checkReportPath(write(folder, "old.html", page))).ok).toBe(true);
    expect((await checkReportPath(write(folder, "empty.html", ""))).ok).toBe(true);
    const offline = pageHtml({ style: "", screen: "", worker: "", licences: "" });
    expect((await checkReportPath(write(folder, "page.html", offline))).ok).toBe(true);
  });

  it("refuses to write over a page that is somebody's own", async () => {
    const folder = temporaryFolder();
    const own = "<!doctype html>\n<title>My recipes</title>\n";
    const refused = textOf(await checkReportPath(write(folder, "recipes.html", own)));
    expect(refused).toContain("a file that is not a report is there");
  });

  it("refuses to write over anything else", async () => {
    const folder = temporaryFolder();
    const readings = write(folder, "night.csv", "time,jar\n0,38\n");
    expect(textOf(await checkReportPath(readings))).toContain(
      "a file that is not a report is there",
    );
    mkdirSync(join(folder, "inner"));
    expect(textOf(await checkReportPath(join(folder, "inner")))).toContain("it is a folder");
    expect(textOf(await checkReportPath("/dev/null"))).toContain("it is not an ordinary file");
    symlinkSync(readings, join(folder, "link.html"));
    expect(textOf(await checkReportPath(join(folder, "link.html")))).toContain("is not a report");
  });

  it("refuses a folder that is missing or cannot take a file", async () => {
    const folder = temporaryFolder();
    const missing = textOf(await checkReportPath(join(folder, "no", "night.html")));
    expect(missing).toContain("the folder does not exist");
    // The kernel's own tree takes no files, not even from root.
    expect(textOf(await checkReportPath("/proc/night.html"))).toContain("could not be written");
  });
});

describe("writeReport", () => {
  it("writes all of it, beside nothing else", async () => {
    const folder = temporaryFolder();
    const file = join(folder, "night.html");
    expect((await writeReport(file, page)).ok).toBe(true);
    expect((await writeReport(file, `${page}again`)).ok).toBe(true);
    expect(readFileSync(file, "utf8")).toBe(`${page}again`);
    expect(listing(folder)).toHaveLength(1);
  });

  it("leaves nothing where the last step fails", async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "night.html"));
    expect((await writeReport(join(folder, "night.html"), page)).ok).toBe(false);
    expect(listing(folder)).toHaveLength(1);
  });
});
