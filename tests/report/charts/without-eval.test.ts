/** Reports, charts and all, where text may not be made into code: in Node, and in a worker of a page that forbids it. */
import { createHash } from "node:crypto";
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { toHtml } from "../../../src/report/html.ts";
import { toKitchenHtml } from "../../../src/report/kitchen-html.ts";
import { launch, noBrowser, open } from "../browser.ts";
import { severalProbes, smallNight } from "../sample-analysis.ts";
import { sampleKitchen } from "../sample-kitchen.ts";
import type { Drawn } from "./worker-drawing.ts";

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
const forbidden = "--disallow-code-generation-from-strings";
const run = (line: readonly string[]) =>
  spawnSync(process.execPath, [forbidden, ...line], { encoding: "utf8" });

describe("drawing in Node without eval", () => {
  it("is tried where code from text is refused", () => {
    expect(run(["-e", `new Function("1")`]).stderr).toContain("EvalError");
  });

  it("gives the same bytes as with it", async () => {
    const { stdout, stderr } = run(["--import", "tsx", here("../render-small-night.ts")]);
    expect(stderr).toBe("");
    expect(stdout).toBe(await toHtml(smallNight(), { renderedOn: "2026-03-15" }));
    expect(stdout).toContain('role="img"');
  });
});

/** A page that may run this one script, and workers of its own making, and nothing else. */
const pageOf = (worker: string): string => {
  const address = `URL.createObjectURL(new Blob([${JSON.stringify(worker).replaceAll("<", "\\u003c")}]))`;
  const script = `globalThis.found = new Promise((resolve, reject) => {
    const worker = new Worker(${address});
    worker.onmessage = ({ data }) => resolve(data);
    worker.onerror = ({ message }) => reject(new Error(message));
  });`;
  const hash = createHash("sha256").update(script).digest("base64");
  return `<!doctype html><meta charset="utf-8"><title>t</title>
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'sha256-${hash}'; worker-src blob:">
<script>${script}</script>`;
};

const bundled = async (): Promise<string> => {
  const { outputFiles } = await build({
    entryPoints: [here("worker-drawing.ts")],
    bundle: true,
    format: "iife",
    platform: "browser",
    target: "es2022",
    minify: true,
    write: false,
    logLevel: "silent",
  });
  return outputFiles[0]!.text;
};

describe.skipIf(noBrowser())("drawing in a worker of a page that forbids eval", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-worker-"));
  const file = join(folder, "page.html");
  beforeAll(async () => writeFileSync(file, pageOf(await bundled())), 60_000);
  afterAll(() => rmSync(folder, { recursive: true }));

  it("gives the same bytes as in Node", async () => {
    const browser = await launch();
    const { page, requests } = await open(browser, pathToFileURL(file).href);
    const found = (await page.evaluate("globalThis.found")) as Drawn & { readonly error?: string };
    await browser.close();
    expect(found.error).toBeUndefined();
    expect([found.hasDocument, found.evalRefused]).toEqual([false, true]);
    const rendered = { renderedOn: "2026-03-20" };
    expect(found.night).toBe(await toHtml(severalProbes(), rendered));
    expect(found.kitchen).toBe(await toKitchenHtml(sampleKitchen(), rendered));
    expect(requests.filter((address) => !address.startsWith("blob:"))).toEqual([]);
  }, 60_000);
});
