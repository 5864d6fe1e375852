/** The client in Chromium, from a file's address and under the page's own policy, with stand-ins for the worker. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pageHtml } from "../../../src/build/page-html.ts";
import { launch, noBrowser, open } from "../../report/browser.ts";

const screenFolder = fileURLToPath(new URL("../../../src/page/screen/", import.meta.url));

const bundledScreen = async (): Promise<string> => {
  const { outputFiles } = await build({
    stdin: {
      contents: 'import { startWorker } from "./start-worker.ts"; window.client = startWorker();',
      resolveDir: screenFolder,
    },
    bundle: true,
    format: "iife",
    write: false,
  });
  return outputFiles[0]?.text ?? "";
};

/** Answers `start` with what it counted so far, says how far it is on `report`, never answers `erase`. */
const counting = `
  let asked = 0;
  const answer = (id, value) => postMessage({ id, kind: "answer", outcome: { ok: true, value } }, []);
  onmessage = ({ data: { id, name } }) => {
    asked += 1;
    if (name === "start") answer(id, asked);
    if (name === "report") {
      for (const read of [1, 2]) postMessage({ id, kind: "progress", read, total: 2 }, []);
      answer(id, "</script><!--");
    }
    if (name === "save") throw new Error("a mistake of the stand-in");
  };`;

describe.skipIf(noBrowser())("startWorker", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-worker-"));
  let browser: Browser;
  let screen: string;

  beforeAll(async () => {
    screen = await bundledScreen();
    browser = await launch();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true });
  });

  const openWith = async (name: string, worker: string): Promise<Page> => {
    const file = join(folder, `${name}.html`);
    writeFileSync(file, pageHtml({ style: "", screen, worker, licences: "" }));
    return (await open(browser, pathToFileURL(file).href)).page;
  };

  it("gives each question its own answer and its own progress", async () => {
    const page = await openWith("answers", counting);
    const said = await page.evaluate(`(async () => {
      const heard = [];
      const report = client.ask("report", null, ({ read, total }) => heard.push([read, total]));
      const start = client.ask("start", null, () => heard.push("start"));
      return { start: await start, report: await report, heard };
    })()`);
    expect(said).toEqual({
      start: { ok: true, value: 2 },
      // The stand-in's code came through the page as it was written.
      report: { ok: true, value: "</script><!--" },
      heard: [
        [1, 2],
        [2, 2],
      ],
    });
    await page.close();
  });

  it("stops what runs, says so to every open question, and goes on with a fresh worker", async () => {
    const page = await openWith("stops", counting);
    const said = await page.evaluate(`(async () => {
      const before = await client.ask("start", null);
      const open = [client.ask("erase", null), client.ask("erase", null)];
      client.stop();
      return { before, open: await Promise.all(open), after: await client.ask("start", null) };
    })()`);
    const stopped = { ok: false, problem: { code: "stopped", facts: { what: "this" } } };
    expect(said).toEqual({
      before: { ok: true, value: 1 },
      open: [stopped, stopped],
      after: { ok: true, value: 1 },
    });
    await page.close();
  });

  it("makes a problem of a mistake in the worker, which keeps what it holds", async () => {
    const page = await openWith("mistake", counting);
    const said = await page.evaluate(`(async () => {
      await client.ask("start", null);
      return [await client.ask("save", { what: "kitchen-yaml" }), await client.ask("start", null)];
    })()`);
    const what = expect.stringContaining("a mistake of the stand-in") as string;
    expect(said).toEqual([
      { ok: false, problem: { code: "internal", facts: { what } } },
      { ok: true, value: 3 },
    ]);
    await page.close();
  });

  it("makes a problem of what cannot be handed over", async () => {
    const page = await openWith("unsendable", counting);
    const said = await page.evaluate(`client.ask("start", () => {})`);
    expect(said).toMatchObject({ ok: false, problem: { code: "internal" } });
    await page.close();
  });

  it("says so each time a browser cannot run the worker, and waits for nothing", async () => {
    const page = await openWith("broken", "let let = 1;");
    const said = await page.evaluate(`(async () => [
      await client.ask("start", null),
      await client.ask("start", null),
    ])()`);
    const problem = { code: "worker-unstarted", facts: { why: expect.any(String) as string } };
    expect(said).toEqual([
      { ok: false, problem },
      { ok: false, problem },
    ]);
    await page.close();
  });

  it("says so where a policy lets no worker run", async () => {
    const file = join(folder, "forbidden.html");
    const html = pageHtml({ style: "", screen, worker: counting, licences: "" });
    writeFileSync(file, html.replace("worker-src blob:", "worker-src 'none'"));
    const { page } = await open(browser, pathToFileURL(file).href);
    const said = await page.evaluate(`client.ask("start", null)`);
    expect(said).toMatchObject({ ok: false, problem: { code: "worker-unstarted" } });
    await page.close();
  });
});
