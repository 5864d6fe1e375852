import { expect, it } from "vitest";
import { heading } from "../../src/report/heading.ts";
import { markup } from "../../src/report/markup.ts";

it("makes a heading of the level asked, its text escaped", () => {
  expect(heading(3, "Jars < basin").html).toBe("<h3>Jars &lt; basin</h3>");
  expect(heading(4, markup`<b>Jar</b>`).html).toBe("<h4><b>Jar</b></h4>");
});
