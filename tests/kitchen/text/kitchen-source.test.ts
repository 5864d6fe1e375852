import { describe, expect, it } from "vitest";
import { readSource } from "../../../src/kitchen/text/kitchen-source.ts";

// Constructed.
const reading = readSource(
  "\uFEFFa: 38,50\nb:\n  - 1.0\n  - c: 'null'\n    d: null\n    e: ~\n2: x\n1: y\n",
);

describe("readSource", () => {
  it("keeps every value as it was written, and nothing as null", () => {
    const expected = { a: "38,50", b: ["1.0", { c: "null", d: null, e: null }], 1: "y", 2: "x" };
    expect(reading.ok && structuredClone(reading.source.data)).toEqual(expected);
  });

  it.each([
    [["a"], 1],
    [["b"], 2],
    [["b", 0], 3],
    [["b", 1, "c"], 4],
    [["b", 1, "missing"], 4],
    [["2"], 7],
    [["nowhere"], 1],
  ] as const)("finds the line of %j", (path, line) => {
    expect(reading.ok && reading.source.lineOf({ path, at: "value" })).toBe(line);
  });

  it("gives maps without a prototype", () => {
    expect(reading.ok && Object.getPrototypeOf(reading.source.data)).toBeNull();
  });
});
