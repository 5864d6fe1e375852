/** The page as it is built from these sources. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, it } from "vitest";
import { buildPage, inputsOf } from "../../src/build/page.ts";
import type { BuiltPage } from "../../src/build/page.ts";
import { packageFolder } from "../../src/build/third-party.ts";
import { fromInert } from "../../src/page/inert-text.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** What stands between a start tag and its end, as HTML reads such elements: up to the first end tag. */
const inside = (html: string, startTag: string, name: string): string => {
  const from = html.indexOf(startTag) + startTag.length;
  return html.slice(from, html.indexOf(`</${name}`, from));
};

const hashOf = (text: string): string =>
  `'sha256-${createHash("sha256").update(text).digest("base64")}'`;

describe("the built page", () => {
  let built: BuiltPage;
  let screen: string;
  let worker: string;
  beforeAll(async () => {
    built = await buildPage(root, "1.2.3");
    screen = inside(built.html, "<script>", "script");
    worker = fromInert(inside(built.html, '<script type="text/plain" id="worker-code">', "script"));
  });

  it("is below 2 MB", () => {
    expect(Buffer.byteLength(built.html)).toBeLessThan(2_000_000);
  });

  it("names no file but itself", () => {
    const frame = built.html.replaceAll(/(<(script|style)\b[^>]*>)[^]*?(?=<\/\2)/g, "$1");
    expect(frame.match(/<script/g)).toHaveLength(3);
    expect(frame).not.toMatch(
      /\b(?:src|href|srcset|action|data|poster)=|<link|<base|@import|url\(/i,
    );
    const style = inside(built.html, "<style>", "style");
    expect(style.match(/@import|url\(|@font-face/i)).toBeNull();
    expect(frame).not.toMatch(/https?:/);
  });

  it("has no way in for modules from elsewhere", () => {
    for (const code of [screen, worker]) {
      expect(code.length).toBeGreaterThan(1000);
      expect(code.match(/\bimportScripts\(|\bimport\(["'`]/)).toBeNull();
    }
  });

  it("allows its own script and style by their digest, workers from a blob, and nothing else", () => {
    const policy = /Content-Security-Policy" content="([^"]*)"/.exec(built.html)?.[1];
    const style = inside(built.html, "<style>", "style");
    expect(policy?.split("; ")).toEqual([
      "default-src 'none'",
      `script-src ${hashOf(screen)}`,
      "worker-src blob:",
      `style-src ${hashOf(style)}`,
      "connect-src 'none'",
      "base-uri 'none'",
      "form-action 'none'",
    ]);
  });

  it("knows its version, in its worker", () => {
    expect(worker.includes('"1.2.3"')).toBe(true);
    expect(worker.includes("HOLDBAND_VERSION")).toBe(false);
  });

  it("carries the licence of every package in it", () => {
    const licences = fromInert(
      inside(built.html, '<script type="text/plain" id="licences">', "script"),
    );
    const folders = new Set(inputsOf(built.metafiles).map(packageFolder));
    expect(folders.size).toBeGreaterThan(5);
    for (const folder of folders) {
      if (folder === null) continue;
      const { name, version } = JSON.parse(
        readFileSync(`${root}${folder}/package.json`, "utf8"),
      ) as { name: string; version: string };
      expect(licences).toContain(`\n${name} ${version} (`);
    }
  });

  it("bundles nothing of Node or of the command line", () => {
    const inputs = inputsOf(built.metafiles);
    expect(inputs).toContain("src/analysis.ts");
    expect(inputs.filter((input) => /^node:|^src\/(?:cli|build)\//.test(input))).toEqual([]);
  });

  it("is the same, byte for byte, when built again", async () => {
    expect((await buildPage(root, "1.2.3")).html === built.html).toBe(true);
  });
});
