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
});
