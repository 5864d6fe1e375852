import { describe, expect, it } from "vitest";
import { findDecimal } from "../../../src/readings/text/decimal-sign.ts";

const decimalOf = (cells: string[], delimiter: "," | ";" = ";", said?: "." | ",") =>
  findDecimal(
    cells.map((cell, at) => ({ cells: ["22:00", cell], line: at + 1 })),
    new Set([1]),
    delimiter,
    said,
  );

describe("findDecimal", () => {
  it("is a comma where numbers have one", () => {
    expect(decimalOf(["41,2", "41"])).toEqual({ kind: "decimal", decimal: "," });
    expect(decimalOf(["41,2"], ",")).toEqual({ kind: "decimal", decimal: "," });
    expect(decimalOf(["41,200", "41,250"])).toEqual({ kind: "decimal", decimal: "," });
  });
  it("is a point otherwise", () => {
    expect(decimalOf(["41.2", "1,013.2"])).toEqual({ kind: "decimal", decimal: "." });
    expect(decimalOf(["41"])).toEqual({ kind: "decimal", decimal: "." });
  });
  it("is asked for where a comma between commas may group thousands", () => {
    expect(decimalOf(["1,234", "1,240"], ",")).toEqual({
      kind: "undecidable",
      line: 1,
      found: "1,234",
    });
    expect(decimalOf(["1,234"], ",", ",")).toEqual({ kind: "decimal", decimal: "," });
  });
});
