import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromInert, toInert } from "../../src/page/inert-text.ts";

/** What HTML takes for markup inside a script element (HTML Living Standard, 13.2.5.4 script data state). */
const seenByHtml = /<!--|<\/?script/i;

const pieces = ["<", "/", "!--", "script", "SCRIPT", ">", "&", "amp;", "lt;", "&amp;", "&lt;", "x"];
const hostile = fc
  .array(fc.constantFrom(...pieces), { maxLength: 14 })
  .map((parts) => parts.join(""));

describe("inert text", () => {
  it("comes out as it was, and holds nothing HTML would act on", () => {
    fc.assert(
      fc.property(fc.oneof(hostile, fc.string()), (text) => {
        expect(fromInert(toInert(text))).toBe(text);
        expect(toInert(text)).not.toMatch(seenByHtml);
      }),
    );
  });

  it("leaves other text as it is", () => {
    const code = "if (a<b && c</d/.length) return '<p>&nbsp;</p>';";
    expect(toInert(code)).toBe(code);
  });
});
