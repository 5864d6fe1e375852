import { describe, expect, it } from "vitest";
import { findDelimiter, sampleRecords, widthOf } from "../../../src/readings/text/dialect.ts";

describe("findDelimiter", () => {
  it.each([
    ["22:00,21.5\n22:30,41.2\n", ","],
    ["22:00;21,5\n22:30;41,2\n", ";"],
    ["22:00\t21,5\n22:30\t41,2\n", "\t"],
    ["22:00 | 21,5\n22:30 | 41,2\n", "|"],
    ["Serial: 1, 2, 3\nPlace: a, b, c\n22:00;21,5;20,1\n22:30;41,2;20,1\n23:00;41,2;20,1\n", ";"],
    ["22:00,21.5,ok; stable\n22:30,41.2,ok; stable\n", ","],
    ['"Jan 5, 2026 22:00";21.5\n"Jan 5, 2026 22:30";41.2\n', ";"],
    ["Temperatur\n21,5\n41,2\n41,0\n", ";"],
    ["21.5\n41.2\n", null],
    ["21.5 C\n41.2 C\n41.0 C\n", null],
    ["22:00 21.5\n22:30 41.2\n", " "],
    ["22:00  21,5\n22:30  41,2\n", "  "],
    ["22:00 21,5\n22:30 41,2\n", " "],
    ["2026-01-05 22:00   21.5   20.0\n2026-01-05 22:30   41.2   20.1\n", "  "],
    [" 9  9.5\n10 10.5\n11 11.5\n12 11.6\n13 12.5\n", " "],
  ] as const)("%j: %j", (text, delimiter) => {
    expect(findDelimiter(text)).toBe(delimiter);
  });
});

describe("sampleRecords and widthOf", () => {
  it("keeps lines and counts cells up to the last that is not blank", () => {
    expect(sampleRecords("a;b\n\nc;\n", ";")).toEqual([
      { cells: ["a", "b"], line: 1 },
      { cells: ["c", ""], line: 3 },
    ]);
    expect(widthOf(["a", "", "b", " ", ""])).toBe(3);
  });
});
