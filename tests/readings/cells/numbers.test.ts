import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainNumber, readCellNumber } from "../../../src/readings/cells/numbers.ts";

describe("readCellNumber", () => {
  it.each([
    ["41.2", ".", 41.2, null],
    [" -0.5 ", ".", -0.5, null],
    ["\u22125", ".", -5, null],
    ["41,2", ",", 41.2, null],
    ["41.2", ",", 41.2, null],
    ["1.013,25", ",", 1013.25, null],
    ["1,013.25", ".", 1013.25, null],
    ["41.2 °C", ".", 41.2, "degC"],
    ["105.8F", ".", 105.8, "degF"],
    ["41,2°C", ",", 41.2, "degC"],
    ["41.2 deg C", ".", 41.2, "degC"],
    ["106℉", ".", 106, "degF"],
    ["41.2\uFFFDC", ".", 41.2, "degC"],
    ["41.2°", ".", 41.2, null],
    ["4.12e1", ".", 41.2, null],
  ] as const)("%s with %s is %f", (cell, decimal, value, unit) => {
    expect(readCellNumber(cell, decimal)).toEqual({ value, unit });
  });

  it.each(["", " ", "ERR", "4x.2", "41.2.3", "22:30", "0x1f", "Infinity", "41.2 V", "2026-01-05"])(
    "%s is no number",
    (cell) => {
      expect(readCellNumber(cell, ".")).toBeNull();
    },
  );

  it("does not take a decimal comma where points are decimal", () => {
    expect(readCellNumber("41,2", ".")).toBeNull();
  });
});

describe("plainNumber", () => {
  it.each(["41.2", "-0.5", "+3", ".5", "7", "41"])("reads %s as Number does", (cell) => {
    expect(plainNumber(cell, ".")).toBe(Number(cell));
  });

  it.each(["", " ", "0x1f", "Infinity", "1e3", "41.2C", "22:30"])(
    "leaves %s to the slow way",
    (cell) => {
      expect(plainNumber(cell, ".")).toBeNaN();
    },
  );

  it("reads a decimal comma", () => {
    expect(plainNumber("41,2", ",")).toBe(41.2);
    expect(plainNumber("1,2,3", ",")).toBeNaN();
  });

  it("gives the very number that Number gives, for any digits", () => {
    const digits = fc.string({ unit: fc.constantFrom(..."0123456789"), maxLength: 9 });
    fc.assert(
      fc.property(fc.constantFrom("", "-", "+"), digits, digits, (sign, whole, part) => {
        for (const text of [`${sign}${whole}.${part}`, `${sign}${whole}${part}`]) {
          const wanted = /\d/u.test(text) ? Number(text) : Number.NaN;
          expect(plainNumber(text, ".")).toBe(wanted);
          expect(plainNumber(text.replace(".", ","), ",")).toBe(wanted);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
