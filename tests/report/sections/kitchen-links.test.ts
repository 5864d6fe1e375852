import { expect, it } from "vitest";
import { readTests } from "../../../src/report/kitchen-page.ts";
import { markup } from "../../../src/report/markup.ts";
import { testLinks } from "../../../src/report/sections/kitchen-links.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

it("calls a test by its day, or by its name where that is not known", () => {
  const kitchen = sampleKitchen();
  const [dated] = readTests(kitchen);
  const undated = { ...dated!, startedAt: null };
  const analysis = { ...kitchen, tests: [dated!, undated] };
  const { html } = markup`${testLinks(analysis, [dated!, undated])}`;
  expect(html).toMatch(/<a href="#test-1"><span class="day">\d{4}-\d\d-\d\d<\/span><\/a>, /);
  expect(html).toContain(`<a href="#test-2">${undated.test.id}</a>`);
});
