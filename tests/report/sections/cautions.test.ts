import { expect, it } from "vitest";
import { cautionsSection } from "../../../src/report/sections/cautions.ts";
import { cautions } from "../../../src/report/wording/cautions.ts";

it("shows every caution under a heading of its own section", () => {
  const { html } = cautionsSection();
  expect(html.match(/<dt>/g)!.length).toBe(cautions.length);
  for (const { title } of cautions) expect(html).toContain(`<dt>${title}</dt>`);
  expect(html).toContain('<h2 id="cautions">');
});
