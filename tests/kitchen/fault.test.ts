import { describe, expect, it } from "vitest";
import {
  faultList,
  faultText,
  foundInWords,
  pathInWords,
  printable,
} from "../../src/kitchen/fault.ts";
import type { Fault } from "../../src/kitchen/fault.ts";

// Constructed.
const fault: Fault = {
  line: 4,
  path: ["thermometers", "stick", "checks", 1],
  at: "value",
  expected: "a date",
  found: '"soon"',
  example: "2026-10-03",
  suggestion: "",
};

describe("faultText", () => {
  it("says where, what was expected, what was found and what to write", () => {
    expect(faultText(fault)).toBe(
      'Line 4, thermometers > stick > checks > 2: expected a date, found "soon"; write for example 2026-10-03.',
    );
  });

  it("asks for the name that was probably meant instead", () => {
    expect(faultText({ ...fault, suggestion: "sonn" })).toMatch(
      /found "soon"; did you mean "sonn"\?$/,
    );
  });

  it("leaves out what there is not", () => {
    expect(faultText({ ...fault, line: null, path: [], example: "" })).toBe(
      'In the file: expected a date, found "soon".',
    );
    expect(faultText({ ...fault, path: [], example: "" })).toMatch(/^Line 4: expected/);
    expect(faultText({ ...fault, line: null })).toMatch(/^In thermometers > stick > checks > 2:/);
  });
});

describe("faultList", () => {
  it("is in the order of the lines and counts what it does not show", () => {
    const faults = Array.from({ length: 23 }, (_, index) => ({ ...fault, line: 23 - index }));
    const lines = faultList(faults).split("\n");
    expect(lines).toHaveLength(21);
    expect(lines[0]).toMatch(/^- Line 1,/);
    expect(lines[19]).toMatch(/^- Line 20,/);
    expect(lines[20]).toBe("- and 3 more.");
  });
});

describe("what a file says, in a sentence", () => {
  it("has no characters that move or hide others, and an end", () => {
    expect(printable("a\u0000b\n\n c\u202Ed")).toBe("a b c d");
    expect([...printable("🍯".repeat(100))]).toHaveLength(60);
    expect(printable("x".repeat(100))).toMatch(/x\.\.\.$/);
    expect(pathInWords(["a\nb", 0])).toBe("a b > 1");
  });

  it("names what is no text", () => {
    expect([null, undefined, [], {}, "a"].map(foundInWords)).toEqual([
      "nothing",
      "nothing",
      "a list",
      "a group of keys",
      '"a"',
    ]);
  });
});
