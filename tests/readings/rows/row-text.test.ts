import { describe, expect, it } from "vitest";
import { isMisaligned, isTextRow, rowKey } from "../../../src/readings/rows/row-text.ts";

describe("isTextRow", () => {
  it.each([
    ["Average", "", "41.2"],
    ["# button"],
    ["", "End"],
    ["Total readings: 43200"],
    ["---", "---"],
  ])("%j %j", (...cells) => {
    expect(isTextRow(cells)).toBe(true);
  });
  it.each([
    ["2x:30", "41.2"],
    ["05 Jan 2026 22:3", "41.2"],
    ["", "41.2"],
    ["22:30", "lid"],
  ])("not %j %j", (...cells) => {
    expect(isTextRow(cells)).toBe(false);
  });
});

describe("rowKey", () => {
  it("is the same for a heading printed again with blanks and trailing delimiters", () => {
    expect(rowKey(["Time", " Temp ", ""])).toBe(rowKey(["time", "temp"]));
    expect(rowKey(["Time", "Temp"])).not.toBe(rowKey(["Time Temp"]));
  });
});

describe("isMisaligned", () => {
  it.each([
    ["digits beyond the last column", ["22:30", "41", "2"], ",", 2, true],
    ["a remark beyond it", ["22:30", "41.2", "lid"], ",", 2, false],
    ["as many as columns", ["22:30", "41.2"], " ", 2, false],
    ["a cell left out between blanks", ["22:30", "41.2"], "  ", 3, true],
    ["an empty end between semicolons", ["22:30", "41,2"], ";", 3, false],
  ] as const)("%s", (_, cells, delimiter, columns, expected) => {
    expect(isMisaligned(cells, delimiter, columns)).toBe(expected);
  });
});
