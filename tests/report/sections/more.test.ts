import { expect, it } from "vitest";
import { markup } from "../../../src/report/markup.ts";
import { more } from "../../../src/report/sections/more.ts";

it("folds its content under a summary, without a script", () => {
  const { html } = more("More <figures>", markup`<p>in</p>`);
  expect(html).toMatch(
    /^<details><summary>More &lt;figures&gt;<\/summary>\s*<p>in<\/p>\s*<\/details>$/,
  );
});
