import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { eachRecord } from "../../../src/readings/text/records.ts";

const recordsOf = (...blocks: string[]): [string[], number][] => {
  const found: [string[], number][] = [];
  eachRecord(blocks, ",", (cells, line) => found.push([[...cells], line]));
  return found;
};

describe("eachRecord", () => {
  it("counts the file's lines across blocks, blank lines and quoted line ends", () => {
    expect(recordsOf('a,b\n\n"c\nd",e\n', "f\n", "  \ng,\n")).toEqual([
      [["a", "b"], 1],
      [["c\nd", "e"], 3],
      [["f"], 5],
      [["g", ""], 7],
    ]);
  });

  it("takes quotes inside a cell as they are", () => {
    expect(recordsOf('a,5" pipe\n')).toEqual([[["a", '5" pipe'], 1]]);
  });

  it("cuts a block without quotes as csv-parse does", () => {
    const cell = fc.string({
      unit: fc.constantFrom("a", "4", ".", " ", "\t", ";", "\u00b0"),
      maxLength: 4,
    });
    const row = fc.array(cell, { minLength: 1, maxLength: 4 }).map((cells) => cells.join(","));
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), fc.boolean(), (rows, ended) => {
        const text = rows.join("\n") + (ended ? "\n" : "");
        const all = parse(text, { relax_column_count: true, record_delimiter: "\n" });
        const wanted = (all as string[][]).filter(
          (cells) => cells.length > 1 || cells[0]?.trim() !== "",
        );
        expect(recordsOf(text).map(([cells]) => cells)).toEqual(wanted);
      }),
    );
  });
});
