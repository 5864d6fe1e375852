import { createHash } from "node:crypto";
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { toHtml, toHtmlParts } from "../../src/report/html.ts";
import { expectGolden } from "./golden.ts";
import {
  analysisOf,
  holdsNight,
  hostileNames,
  hostileNight,
  probe,
  severalProbes,
  smallNight,
  unprovenNight,
} from "./sample-analysis.ts";

const rendered = { renderedOn: "2026-03-15" };

describe("toHtml", () => {
  it("writes the small report as kept", async () => {
    expectGolden("small-night.html.txt", await toHtml(smallNight(), rendered));
  });

  it("is made of the parts another document can take, names escaped in each", async () => {
    const night = hostileNight();
    const html = await toHtml(night, rendered);
    const parts = await toHtmlParts(night, rendered);
    expect(html).toContain(`<title>${parts.title}</title>`);
    expect(html).toContain(`<h1>${parts.heading}</h1>\n${parts.byline}\n</header>`);
    expect(html).toContain(`<main id="answers">\n${parts.main}\n</main>`);
    for (const part of Object.values(parts)) {
      for (const name of hostileNames) if (/[<>]/.test(name)) expect(part).not.toContain(name);
    }
  });

  it("gives the same bytes again, and in any time zone and locale", async () => {
    const here = await toHtml(smallNight(), rendered);
    expect(await toHtml(smallNight(), rendered)).toBe(here);
    const script = fileURLToPath(new URL("render-small-night.ts", import.meta.url));
    const elsewhere = spawnSync(process.execPath, ["--import", "tsx", script], {
      env: { ...process.env, TZ: "Pacific/Kiritimati", LC_ALL: "de_DE.UTF-8", LANG: "de_DE.UTF-8" },
      encoding: "utf8",
    });
    expect(elsewhere.stderr).toBe("");
    expect(elsewhere.stdout).toBe(here);
  }, 30_000);

  it("keeps one night under 400 kB, however many readings", async () => {
    const shape = {
      level: 41,
      swing: 1.4,
      periodMinutes: 11,
      perHour: 0.02,
      stepSeconds: 1,
      hours: 12,
    };
    const night = analysisOf([probe({ shape })]);
    expect(night.probes[0]!.series.minutes.length).toBe(43_200);
    const html = await toHtml(night, rendered);
    expect(Buffer.byteLength(html)).toBeLessThan(400_000);
    expect(Buffer.byteLength(await toHtml(severalProbes(), rendered))).toBeLessThan(400_000);
  });

  it("allows its own style sheet by hash and nothing else", async () => {
    const html = await toHtml(holdsNight(), rendered);
    const style = /<style>([\s\S]*?)<\/style>/.exec(html)![1]!;
    const hash = createHash("sha256").update(style).digest("base64");
    expect(html).toContain(
      `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-${hash}'; base-uri 'none'; form-action 'none'">`,
    );
    expect(html.indexOf("Content-Security-Policy")).toBeLessThan(html.indexOf("<style>"));
  });

  it("has no script, no inline style, and no address that could be fetched", async () => {
    const html = await toHtml(severalProbes(), rendered);
    expect(html).not.toMatch(/<(?:script|iframe|object|embed|img|link|form|base)\b/i);
    expect(html).not.toMatch(/\s(?:style|on[a-z]+)=/i);
    expect(html).not.toMatch(/@import|url\((?!#)/);
    const addresses = [...html.matchAll(/[a-z-]+="https?:[^"]*"/g)].map(([text]) => text);
    expect(new Set(addresses)).toEqual(new Set(['xmlns="http://www.w3.org/2000/svg"']));
  });

  it("keeps hostile names text", async () => {
    const html = await toHtml(hostileNight(), rendered);
    for (const name of hostileNames) if (/[<>]/.test(name)) expect(html).not.toContain(name);
    expect(html).toContain("&lt;script&gt;alert(1)&lt;/script&gt;");
    expect(html.match(/<\/style>/g)!.length).toBe(1);
    expect(html.match(/<\/title>/g)!.length).toBe(
      1 + html.match(/<svg /g)!.length - keySamples(html),
    );
  });

  it("says in words what each drawing shows, under ids used once", async () => {
    const html = await toHtml(severalProbes(), rendered);
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id!);
    expect(new Set(ids).size).toBe(ids.length);
    const images = [...html.matchAll(/<svg [^>]*role="img"[^>]*aria-labelledby="([^"]+)"/g)];
    expect(images.length).toBeGreaterThan(10);
    for (const [, labels] of images) {
      for (const id of labels!.split(" ")) expect(ids).toContain(id);
    }
  });

  it("gives headings in order, with no level skipped", async () => {
    const html = await toHtml(unprovenNight(), rendered);
    const levels = [...html.matchAll(/<h([1-6])[\s>]/g)].map(([, level]) => Number(level));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1).length).toBe(1);
    levels.slice(1).forEach((level, at) => expect(level - levels[at]!).toBeLessThanOrEqual(1));
  });

  it("puts answer, night, doubt, readings, cautions, method and provenance in that order", async () => {
    const html = await toHtml(unprovenNight(), rendered);
    const marks = [
      'class="answer unproven"',
      'id="probe-1"',
      'id="doubt"',
      'id="data"',
      'id="cautions"',
      'id="method"',
      'id="provenance"',
    ].map((mark) => html.indexOf(mark));
    expect(marks).not.toContain(-1);
    expect(marks).toEqual(marks.toSorted((a, b) => a - b));
  });
});

/** The little samples in the keys are decoration and carry no title. */
const keySamples = (html: string): number => html.match(/<svg [^>]*aria-hidden="true"/g)!.length;
