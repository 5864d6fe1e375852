import { describe, expect, it } from "vitest";
import {
  blockText,
  blockValue,
  dataOf,
  flowItem,
  flowKey,
  sameData,
} from "../../../src/kitchen/edits/written-entry.ts";

// Constructed.
describe("text of an entry", () => {
  it("puts lists of values on one line and indents the rest", () => {
    const entry = { ice: [0.3, "x, y"], more: { a: true, b: null }, probes: { J: { place: "f" } } };
    expect(blockText(entry, 4, "\r\n").split("\r\n")).toEqual([
      'ice: [0.3, "x, y"]',
      "    more:",
      "      a: yes",
      "    probes:",
      "      J: {place: f}",
    ]);
  });

  it("quotes what would be something else", () => {
    expect(
      ["38", "null", "a #b", "a: b", "", "yes", "two\nlines"].map((text) =>
        blockValue(text, 0, "\n"),
      ),
    ).toEqual(['"38"', '"null"', '"a #b"', '"a: b"', '""', "yes", '"two\\nlines"']);
    expect(["a, b", "[a", "a"].map(flowItem)).toEqual(['"a, b"', '"[a"', "a"]);
    expect(["a: b", "x", "1"].map(flowKey)).toEqual(['"a: b"', "x", '"1"']);
  });
});

describe("data of an entry", () => {
  it("is what reading its text gives", () => {
    const data = dataOf({ a: 1.5, b: true, c: null, d: undefined, e: ["x", 2] });
    expect(structuredClone(data)).toEqual({ a: "1.5", b: "yes", e: ["x", "2"] });
  });

  it("compares without regard to the order of keys, and takes empty for nothing", () => {
    expect(sameData({ a: "1", b: ["2"] }, { b: ["2"], a: "1" })).toBe(true);
    expect(sameData({ a: [] }, { a: null })).toBe(true);
    expect(sameData({ a: "1" }, { a: "2" })).toBe(false);
    expect(sameData(["1", "2"], ["2", "1"])).toBe(false);
  });
});
