import fc from "fast-check";
import { expect, it } from "vitest";
import { plainText } from "../../../src/page/work/plain-text.ts";
import { escapeText, markup } from "../../../src/report/markup.ts";

it("is a heading's text without its tags", () => {
  expect(plainText(markup`holds for <b>${"Long & mild"}</b> (${"< 1 %"})`.html)).toBe(
    "holds for Long & mild (< 1 %)",
  );
});

it("undoes the escaping of any text, entities spelt out included", () => {
  const spelt = fc.stringMatching(/^(?:&|amp;|lt;|#39;|[<>"' a-z])*$/);
  fc.assert(fc.property(spelt, (text) => plainText(escapeText(text)) === text));
});
