import { describe, expect, it } from "vitest";
import { createProbeReader } from "../../../src/readings/cells/probe-reader.ts";
import { codeOf } from "../../../src/readings/rows/tally.ts";

const column = {
  column: 1,
  heading: "T",
  bareName: "T",
  unit: "degC",
  unitColumn: null,
  printedStep: 0.1,
} as const;

describe("createProbeReader", () => {
  it("keeps a number or a reason for every cell", () => {
    const reader = createProbeReader(column, ",", () => {});
    for (const cell of ["41,2", "41,2 °C", "", "ERR", "4x"]) reader.read(["", cell], 1);
    reader.read(["short row"], 6);
    reader.refuse();
    expect(Array.from(reader.cells.values.view())).toEqual([41.2, 41.2, NaN, NaN, NaN, NaN, NaN]);
    expect([...reader.cells.reasons.view()]).toEqual(
      [
        "",
        "",
        "missing",
        "text-flag",
        "unparseable-temperature",
        "missing",
        "unparseable-temperature",
      ].map((reason) => (reason === "" ? 0 : codeOf(reason as "missing"))),
    );
  });
  it("tells of another unit, in the cell or in the column of units", () => {
    const told: [number, string][] = [];
    const inCell = createProbeReader(column, ".", (line, found) => told.push([line, found]));
    inCell.read(["", "106F"], 7);
    const beside = createProbeReader({ ...column, unitColumn: 2 }, ".", (line, found) =>
      told.push([line, found]),
    );
    beside.read(["", "41", "C"], 8);
    beside.read(["", "106", "F"], 9);
    expect(told).toEqual([
      [7, "106F"],
      [9, "F"],
    ]);
  });
});
