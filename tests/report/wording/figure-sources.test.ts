import { expect, it } from "vitest";
import { sourceText } from "../../../src/report/wording/figure-sources.ts";

it("says of each figure where it is from, and of what has no source that it has none", () => {
  expect(sourceText({ kind: "published", work: "A table", printed: "20" })).toBe("A table");
  expect(sourceText({ kind: "from memory", work: "A table" })).toBe("from memory of A table");
  expect(sourceText({ kind: "common practice" })).toBe("common practice, no source");
  expect(sourceText({ kind: "own" })).toBe("your own figures");
});
