import { parseDocument } from "yaml";
import { describe, expect, it } from "vitest";
import { syntaxWords } from "../../../src/kitchen/text/syntax-words.ts";

// Constructed; the sentences as a whole are in ../mistakes-table.ts.
describe("syntaxWords", () => {
  it.each([
    ["a:\n\tb: 1\n", "spaces before the line"],
    ["a: [1, 2\nb: 3\n", "brackets that open and close"],
    ["a: 'b\n", "a closing quote"],
    ["a: - b\n", "each entry of a list on its own line"],
    ["a: b: c\n", 'one "key: value" to a line'],
    ["a:\n  - b: 1\n   c: 2\n", "each entry of a list on its own line"],
    ["  a: 1\nb: 2\n", 'lines such as "key: value"'],
  ])("%j", (text, expected) => {
    const [error] = parseDocument(text, { prettyErrors: false }).errors;
    expect(error && syntaxWords(error, text).expected).toContain(expected);
  });

  it("never passes on the parser's own words", () => {
    const texts = ["a: @b\n", 'a: "\\q"\n', "a: }\n", "? [a]\n: b\n", "&a &b c\n", "- a\nb: 1\n"];
    for (const text of texts) {
      const options = { prettyErrors: false, stringKeys: true } as const;
      for (const error of parseDocument(text, options).errors) {
        expect(syntaxWords(error, text).expected).not.toContain(error.message.slice(0, 12));
      }
    }
  });
});
