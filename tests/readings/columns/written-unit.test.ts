import { describe, expect, it } from "vitest";
import { columnFacts } from "../../../src/readings/columns/column-facts.ts";
import {
  findUnitColumns,
  preambleUnit,
  unitCellUnit,
  writtenUnit,
} from "../../../src/readings/columns/written-unit.ts";

const rows = [
  ["21.5", "C", "x"],
  ["41.2", "C", ""],
].map((cells, at) => ({ cells, line: at + 1 }));

describe("units beside the numbers", () => {
  it("finds a column of units and takes it for the column before", () => {
    expect(findUnitColumns(rows, 3)).toEqual([1]);
    expect(writtenUnit(columnFacts(rows, 0, "."), "value", [1], rows)).toEqual({
      unit: "degC",
      unitColumn: 1,
    });
    expect(unitCellUnit("°F")).toBe("degF");
    expect(unitCellUnit("full")).toBeNull();
  });
  it("takes the heading's, then the cells'", () => {
    const cells = [{ cells: ["70 F"], line: 1 }];
    expect(writtenUnit(columnFacts(cells, 0, "."), "x (°C)", [], cells).unit).toBe("degC");
    expect(writtenUnit(columnFacts(cells, 0, "."), "x", [], cells).unit).toBe("degF");
  });
});

describe("preambleUnit", () => {
  it("reads the one unit that is stated", () => {
    expect(preambleUnit([{ cells: ["Temperature unit", "°F"], line: 1 }])).toBe("degF");
    expect(preambleUnit([{ cells: ["Einheit: °C"], line: 1 }])).toBe("degC");
    expect(preambleUnit([{ cells: ["Site: C"], line: 1 }])).toBeNull();
    expect(preambleUnit([{ cells: ["Units: C", "Unit: F"], line: 1 }])).toBeNull();
  });
});
