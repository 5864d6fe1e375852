import { expect, it } from "vitest";
import { shownReport } from "../../../src/page/work/shown-report.ts";
import { htmlParts } from "../../../src/report/html-page.ts";
import { markup } from "../../../src/report/markup.ts";

it("has names as plain text where the screen shows text, and markup where it shows markup", () => {
  const name = `<b>"Salt & Pepper's"</b>`;
  const parts = htmlParts({
    title: `Water test: ${name}`,
    heading: name,
    byline: markup`<p>${name}</p>`,
    main: markup`<h2>${name}</h2>`,
  });
  const shown = shownReport(parts, "It holds.");
  expect(shown.title).toBe(`Water test: ${name}`);
  expect(shown.heading).toBe(name);
  expect(shown.summary).toBe("It holds.");
  expect(shown.main).toBe("<h2>&lt;b&gt;&quot;Salt &amp; Pepper&#39;s&quot;&lt;/b&gt;</h2>");
  expect(shown.byline).toContain("&lt;b&gt;");
});

it("leaves out how the command line would be told, and no more", () => {
  const main = markup`<p>Say its unit (--unit C or --unit F). Or not (as it is).</p><path fill="var(--muted)"/>`;
  const parts = htmlParts({ title: "", heading: "", byline: markup``, main });
  expect(shownReport(parts, "").main).toBe(
    `<p>Say its unit. Or not (as it is).</p><path fill="var(--muted)"/>`,
  );
});
