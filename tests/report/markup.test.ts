import fc from "fast-check";
import { expect, it } from "vitest";
import { escapeText, markup, trustedMarkup } from "../../src/report/markup.ts";

it("escapes text, keeps markup, joins lists", () => {
  const name = `<b title="x">&'`;
  const rows = [markup`<li>${name}</li>`, markup`<li>${1}</li>`];
  expect(markup`<ul>${rows}</ul>${null}${trustedMarkup("<hr>")}`.html).toBe(
    "<ul><li>&lt;b title=&quot;x&quot;&gt;&amp;&#39;</li><li>1</li></ul><hr>",
  );
});

it("lets no text open a tag or close an attribute", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      expect(escapeText(text)).not.toMatch(/[<>"']/);
    }),
    { numRuns: 100 },
  );
});
