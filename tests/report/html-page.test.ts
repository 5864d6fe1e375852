import { expect, it } from "vitest";
import { htmlPage, htmlParts, shownDate } from "../../src/report/html-page.ts";
import { markup } from "../../src/report/markup.ts";

it("shortens an ISO time to the minute and leaves other texts alone", () => {
  expect(shownDate("2026-03-20T09:12:33.120Z")).toBe("2026-03-20, 09:12 UTC");
  expect(shownDate("2026-03-20")).toBe("2026-03-20");
});

it("frames a page: policy before style, one heading, a way past the head, titles escaped", async () => {
  const html = await htmlPage(
    htmlParts({
      title: "a <b> & c",
      heading: "One <i>",
      byline: markup`<p>by</p>`,
      main: markup`<p>main</p>`,
    }),
  );
  expect(html.startsWith("<!doctype html>")).toBe(true);
  expect(html).toContain("<title>a &lt;b&gt; &amp; c</title>");
  expect(html).toContain("<h1>One &lt;i&gt;</h1>");
  expect(html.indexOf("Content-Security-Policy")).toBeLessThan(html.indexOf("<style>"));
  expect(html).toMatch(/<a class="skip" href="#answers">/);
  expect(html).toMatch(/<main id="answers">\s*<p>main<\/p>/);
});
