import { describe, expect, it } from "vitest";
import { columns } from "../../../src/cli/kitchen/columns.ts";

const page = { width: 20, ascii: false };

describe("columns", () => {
  it("lines cells up and wraps the last one under itself", () => {
    expect(
      columns(
        [
          ["a", "one", "short"],
          ["longer", "b", "words that go on"],
        ],
        page,
      ),
    ).toEqual([
      "a       one  short",
      "longer  b    words",
      "             that go",
      "             on",
    ]);
  });

  it("leaves no blanks at the ends, and nothing that steers a terminal", () => {
    expect(
      columns(
        [
          ["a", ""],
          ["\u001B[2J", "x"],
        ],
        page,
      ),
    ).toEqual(["a", "\ufffd[2J  x"]);
    expect(columns([["\u00fc", "x"]], { ...page, ascii: true })).toEqual(["?  x"]);
  });

  it("has nothing to say of no rows", () => {
    expect(columns([], page)).toEqual([]);
  });
});
