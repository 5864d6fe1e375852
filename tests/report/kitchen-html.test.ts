import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { toKitchenHtml, toKitchenHtmlParts } from "../../src/report/kitchen-html.ts";
import { visibleText } from "./drawing.ts";
import { hostileNames } from "./sample-analysis.ts";
import { hostileKitchen, oneAppliance, sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

const rendered = { renderedOn: "2026-03-20T09:12:00.000Z" };
const kitchens = {
  "the whole kitchen": sampleKitchen,
  "one appliance": () => oneAppliance("step-cooker"),
  "an untested kitchen": untestedKitchen,
  "hostile names": hostileKitchen,
};

const idsIn = (html: string): string[] =>
  [...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id!);

describe.each(Object.entries(kitchens))("toKitchenHtml: %s", (_, kitchen) => {
  it("gives each id once, and every link and label a place to lead to", async () => {
    const html = await toKitchenHtml(kitchen(), rendered);
    const ids = idsIn(html);
    expect(new Set(ids).size).toBe(ids.length);
    const links = [...html.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id!);
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((id) => !ids.includes(id))).toEqual([]);
    const labels = [...html.matchAll(/aria-labelledby="([^"]+)"/g)].flatMap(([, named]) =>
      named!.split(" "),
    );
    expect(labels.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it("gives headings in order, with no level skipped", async () => {
    const html = await toKitchenHtml(kitchen(), rendered);
    const levels = [...html.matchAll(/<h([1-6])[\s>]/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toEqual([1]);
    expect(levels[0]).toBe(1);
    levels.slice(1).forEach((level, at) => expect(level - levels[at]!).toBeLessThanOrEqual(1));
  });

  it("has no script, no inline style, and no address that could be fetched", async () => {
    const html = await toKitchenHtml(kitchen(), rendered);
    expect(html).not.toMatch(/<(?:script|iframe|object|embed|img|link|form|base)\b/i);
    expect(html.replaceAll(/<style>[\s\S]*?<\/style>/g, "")).not.toMatch(
      /<[^>]*\s(?:style|on[a-z]+)=/i,
    );
    const style = /<style>([\s\S]*?)<\/style>/.exec(html)![1]!;
    const hash = createHash("sha256").update(style).digest("base64");
    expect(html).toContain(`style-src 'sha256-${hash}'`);
  });
});

describe("toKitchenHtml", () => {
  it("puts the answers first, then what they rest on", async () => {
    const html = await toKitchenHtml(sampleKitchen(), rendered);
    const marks = [
      'class="byline',
      'class="pairing"',
      'class="by-appliance"',
      'class="next-step"',
      'class="note unread"',
      'class="contents"',
      'id="matrix"',
      'id="advice"',
      'id="response"',
      'id="why"',
      'id="test-1"',
      'id="test-7"',
      'id="containers"',
      'id="thermometers"',
      'id="repeats"',
      'id="doubt"',
      'id="data"',
      'id="next"',
      'id="cautions"',
      'id="method"',
      'id="provenance"',
    ].map((mark) => html.indexOf(mark));
    expect(marks).not.toContain(-1);
    expect(marks).toEqual(marks.toSorted((a, b) => a - b));
  });

  it("is made of the parts another document can take", async () => {
    const html = await toKitchenHtml(hostileKitchen(), rendered);
    const parts = await toKitchenHtmlParts(hostileKitchen(), rendered);
    expect(html).toContain(`<title>${parts.title}</title>`);
    expect(html).toContain(`<h1>${parts.heading}</h1>\n${parts.byline}\n</header>`);
    expect(html).toContain(`<main id="answers">\n${parts.main}\n</main>`);
  });

  it("says what it is about, and from which days", async () => {
    const text = visibleText(await toKitchenHtml(sampleKitchen(), rendered));
    expect(text).toContain(
      // The day of a test that cannot be read is not known: it is not among those of the days.
      "The whole kitchen: 5 appliances; 6 water tests from 2026-03-02 to 2026-03-15 , and 1 more that could not be read; 3 cultures. Report made 2026-03-20 , 09:12 UTC by holdband 0.1.0.",
    );
    const one = visibleText(await toKitchenHtml(oneAppliance("box"), rendered));
    expect(one).toContain(
      "Only Warming box, of 5 appliances in the kitchen; 1 water test of 2026-03-15 ; 3 cultures.",
    );
    expect(one).not.toContain("Circulating bath");
    expect(visibleText(await toKitchenHtml(untestedKitchen(), rendered))).toContain(
      "no water test yet",
    );
  });

  it("lists its contents only where it is long", async () => {
    expect(await toKitchenHtml(sampleKitchen(), rendered)).toContain('<nav class="contents"');
    // Three tests: short enough.
    expect(await toKitchenHtml(oneAppliance("step-cooker"), rendered)).not.toContain("<nav");
  });

  it("names every file with its hash, those that could not be read too", async () => {
    const html = await toKitchenHtml(sampleKitchen(), rendered);
    const end = html.slice(html.indexOf('id="provenance"'));
    for (const { test } of sampleKitchen().tests) {
      for (const { path, sha256 } of test.files) {
        expect(end).toContain(path.replace("readings/", ""));
        expect(end).toContain(sha256);
      }
    }
  });

  it("keeps hostile names text", async () => {
    const html = await toKitchenHtml(hostileKitchen(), rendered);
    for (const name of hostileNames) if (/[<>]/.test(name)) expect(html).not.toContain(name);
    expect(html).toContain("&lt;script&gt;alert(1)&lt;/script&gt;");
    expect(html.match(/<\/style>/g)!.length).toBe(1);
    // oxlint-disable-next-line no-control-regex
    expect(html).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
  });

  it("draws a response with fewer bytes than any logged night", async () => {
    const html = await toKitchenHtml(sampleKitchen(), rendered);
    const drawings = html.match(/<svg [\s\S]*?<\/svg>/g)!;
    const sizes = (part: string): number[] =>
      drawings.filter((svg) => svg.includes(part)).map(({ length }) => length);
    const responses = sizes('id="response-');
    expect(responses.length).toBe(8);
    // A test by hand has few readings; the others are logged.
    const nights = sizes("-night-wide-title").toSorted((a, b) => b - a);
    expect(Math.max(...responses)).toBeLessThan(nights[4]!);
  });

  it("stays well below a megabyte for seven tests, and gives the same bytes again", async () => {
    const html = await toKitchenHtml(sampleKitchen(), rendered);
    expect(Buffer.byteLength(html)).toBeLessThan(1_000_000);
    expect(await toKitchenHtml(sampleKitchen(), rendered)).toBe(html);
  });

  it("shows degF first where the kitchen reads it", async () => {
    const whole = sampleKitchen();
    const html = await toKitchenHtml(
      { ...whole, kitchen: { ...whole.kitchen, shownUnit: "degF" } },
      rendered,
    );
    expect(visibleText(html)).toContain("100.4 °F (38 °C), Jars in water");
  });
});
