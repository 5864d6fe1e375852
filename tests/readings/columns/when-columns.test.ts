import { describe, expect, it } from "vitest";
import { columnFacts } from "../../../src/readings/columns/column-facts.ts";
import { headingKind } from "../../../src/readings/columns/headings.ts";
import { findWhenColumns } from "../../../src/readings/columns/when-columns.ts";

const found = (headings: string[] | null, lines: string[], decimal: "." | "," = ".") => {
  const rows = lines.map((line, at) => ({ cells: line.split("|"), line: at + 1 }));
  const width = rows[0]!.cells.length;
  const facts = Array.from({ length: width }, (_, at) => columnFacts(rows, at, decimal));
  const kinds = facts.map((_, at) => headingKind(headings?.[at] ?? ""));
  const when = findWhenColumns({ rows, facts, headings, kinds, decimal }, {});
  return when && [when.columns, when.recogniser.format, when.rewrite("22.30")];
};

describe("findWhenColumns", () => {
  it("prefers date with clock to elapsed time and row numbers", () => {
    expect(
      found(
        ["No.", "Elapsed (min)", "Time", "T1"],
        ["1|0|2026-01-05 22:00|21.5", "2|30|2026-01-05 22:30|41.2"],
      ),
    ).toEqual([[2], "date-time", "22.30"]);
  });
  it("pairs date and clock columns, with AM/PM", () => {
    expect(
      found(
        ["Date", "Time", "", "T1"],
        ["1/25/2026|11:30|PM|21.5", "1/26/2026|12:00|AM|41.2"],
      )?.slice(0, 2),
    ).toEqual([[0, 1, 2], "date-and-time-columns"]);
  });
  it("puts signs right where commas are decimal", () => {
    expect(found(["Aika", "T1"], ["22.00|21,5", "22.30|41,2"], ",")).toEqual([
      [0],
      "clock",
      "22:30",
    ]);
  });
  it("does not take temperatures or row numbers for times", () => {
    expect(found(null, ["21.5|1", "41.2|2", "41.0|3"])).toBeNull();
    expect(found(["Reading", "T1"], ["1|21.5", "2|41.2", "3|41.0"])).toBeNull();
  });
});
