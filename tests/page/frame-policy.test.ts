/**
 * What the page's policy lets its own script and its worker do, asked of Chromium
 * by scripts that try everything, beside a server that counts who comes. The same
 * scripts without the policy reach that server: otherwise nothing would be shown.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pageHtml } from "../../src/build/page-html.ts";
import { launch, noBrowser, open } from "../report/browser.ts";

/** Ways to run text as code: each gives "ran" or the name of its error. */
const codeAttempts = `
  const attempt = async (run) => {
    try { return (await run()) === 1 ? "ran" : "nothing"; } catch (error) { return error.name; }
  };
  const codeTried = async () => ({
    eval: await attempt(() => (0, eval)("1")),
    function: await attempt(() => new Function("return 1")()),
    async: await attempt(() => (async () => {}).constructor("return 1")()),
    timeout: await attempt(() => new Promise((resolve) => {
      self.reached = resolve;
      try { setTimeout("reached(1)", 0); } catch {}
      setTimeout(resolve, 500);
    })),
    data: await attempt(async () => (await import("data:text/javascript,export default 1")).default),
  });`;

/** Ways to ask the network, all at once and each by its own path. */
const requestAttempts = (server: string): string => `
  const quietly = async (run) => { try { await run(); } catch {} };
  const wait = (target) => new Promise((resolve) => {
    target.onload = target.onerror = target.onopen = target.onclose = target.onmessage = resolve;
    setTimeout(resolve, 500);
  });
  const requestsTried = (more) => Promise.all([
    () => fetch("${server}/fetch", { mode: "no-cors" }),
    () => new Promise((resolve) => {
      const request = new XMLHttpRequest();
      request.onloadend = resolve;
      request.open("GET", "${server}/xhr");
      request.send();
    }),
    () => wait(new WebSocket("${server.replace("http", "ws")}/socket")),
    () => wait(new EventSource("${server}/events")),
    () => import("${server}/module.js"),
    ...more,
  ].map(quietly));`;

const workerCode = (server: string): string => `${codeAttempts}${requestAttempts(server)}
  (async () => {
    await requestsTried([() => importScripts("${server}/imported.js")]);
    postMessage(await codeTried(), []);
  })();`;

/** Elements that load something, and a form that sends something. */
const screenCode = (server: string): string => `${codeAttempts}${requestAttempts(server)}
  const element = (name, values) => () => {
    const made = Object.assign(document.createElement(name), values);
    document.body.append(made);
    return wait(made);
  };
  const submitted = () => {
    const made = document.createElement("form");
    Object.assign(made, { action: "${server}/form", target: "aside", method: "post" });
    document.body.append(made);
    made.submit();
    return wait({});
  };
  const styled = () => {
    const made = document.createElement("style");
    made.textContent = "body { background: url(${server}/background) }";
    document.body.append(made);
    return wait(made);
  };
  const fromWorker = () => new Promise((resolve) => {
    const code = document.getElementById("worker-code").textContent;
    const worker = new Worker(URL.createObjectURL(new Blob([code], { type: "text/javascript" })));
    worker.onmessage = ({ data }) => resolve(data);
    worker.onerror = ({ message }) => resolve(message);
  });
  (async () => {
    const worker = fromWorker();
    await requestsTried([
      () => navigator.sendBeacon("${server}/beacon"),
      element("iframe", { name: "aside", src: "${server}/frame" }),
      element("img", { src: "${server}/image" }),
      element("script", { src: "${server}/script.js" }),
      element("link", { rel: "stylesheet", href: "${server}/style.css" }),
      element("video", { src: "${server}/video" }),
      styled,
      submitted,
    ]);
    const inline = document.createElement("script");
    inline.textContent = "self.inlineRan = true";
    document.body.append(inline);
    const holder = document.createElement("div");
    holder.innerHTML = '<img src="data:," onerror="self.handlerRan = true">';
    document.body.append(holder);
    await wait({});
    self.found = {
      page: await codeTried(),
      worker: await worker,
      inline: self.inlineRan === true,
      handler: self.handlerRan === true,
    };
  })();`;

interface Found {
  readonly page: Readonly<Record<string, string>>;
  readonly worker: Readonly<Record<string, string>>;
  readonly inline: boolean;
  readonly handler: boolean;
}

describe.skipIf(noBrowser())("the page's policy", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-policy-"));
  const came: string[] = [];
  let browser: Browser;
  let counter: Server;
  let html: string;

  beforeAll(async () => {
    counter = createServer(({ url }, response) => {
      came.push(url ?? "");
      response.end();
    });
    counter.on("upgrade", ({ url }, socket) => {
      came.push(url ?? "");
      socket.destroy();
    });
    await new Promise<void>((resolve) => counter.listen(0, "127.0.0.1", resolve));
    const server = `http://127.0.0.1:${(counter.address() as AddressInfo).port}`;
    const texts = { screen: screenCode(server), worker: workerCode(server) };
    html = pageHtml({ ...texts, style: "", licences: "" });
    browser = await launch();
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    counter.closeAllConnections();
    counter.close();
    rmSync(folder, { recursive: true });
  });

  const tried = async (name: string, text: string) => {
    came.length = 0;
    const file = join(folder, `${name}.html`);
    writeFileSync(file, text);
    const { page } = await open(browser, pathToFileURL(file).href);
    await page.waitForFunction(() => "found" in globalThis);
    // What the page's own script wrote down: the debugger may run what the policy forbids.
    const found = (await page.evaluate("found")) as Found;
    await page.close();
    return { found, came: came.toSorted() };
  };

  it("lets no text become code, in the page or in its worker, and nobody ask the network", async () => {
    const { found, came: requests } = await tried("with", html);
    const none = {
      eval: "EvalError",
      function: "EvalError",
      async: "EvalError",
      timeout: "nothing",
      data: "TypeError",
    };
    expect(found).toEqual({ page: none, worker: none, inline: false, handler: false });
    expect(requests).toEqual([]);
  });

  it("is what stops them: without it the same scripts run and ask", async () => {
    const free = html.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, "");
    const { found, came: requests } = await tried("without", free);
    const all = { eval: "ran", function: "ran", async: "ran", timeout: "ran", data: "ran" };
    expect(found).toEqual({ page: all, worker: all, inline: true, handler: true });
    expect(requests.length).toBeGreaterThan(15);
    for (const path of ["/fetch", "/xhr", "/beacon", "/image", "/form", "/imported.js"]) {
      expect(requests).toContain(path);
    }
  });
});
