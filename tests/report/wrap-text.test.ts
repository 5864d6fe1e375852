import fc from "fast-check";
import { expect, it } from "vitest";
import { wrapText } from "../../src/report/wrap-text.ts";

it("breaks at spaces, indents, and keeps numbers with their units", () => {
  expect(wrapText("held at 38\u00a0degC for 24\u00a0h", 14, "- ", "  ")).toEqual([
    "- held at",
    "  38 degC for",
    "  24 h",
  ]);
});

it("loses no word and keeps to the width unless one word is longer", () => {
  const words = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(words, fc.integer({ min: 14, max: 60 }), (list, width) => {
      const lines = wrapText(list.join(" "), width);
      expect(lines.join(" ")).toBe(list.join(" "));
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
    }),
  );
});
