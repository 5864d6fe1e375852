import { describe, expect, it } from "vitest";
import {
  columnFacts,
  isFlagLike,
  isIndex,
  risingShare,
} from "../../../src/readings/columns/column-facts.ts";

const factsOf = (...cells: string[]) =>
  columnFacts(
    cells.map((cell, at) => ({ cells: [cell], line: at + 1 })),
    0,
    ".",
  );

describe("columnFacts", () => {
  it("counts what the cells show", () => {
    expect(factsOf("21.5", "41.25 °C", "ERR", "", "22:00", "word")).toMatchObject({
      numbers: 2,
      times: 1,
      flags: 1,
      filled: 5,
      unit: "degC",
      unitShare: 0.5,
      whole: false,
      distinct: 2,
      decimals: 2,
    });
  });
});

describe("isIndex, isFlagLike, risingShare", () => {
  it("tells row numbers, flags and readings apart", () => {
    expect([
      isIndex(factsOf("1", "2", "3")),
      isIndex(factsOf("21", "22", "24")),
      isIndex(factsOf("1.0", "2.0", "3.0")),
    ]).toEqual([true, false, false]);
    const ones = Array.from({ length: 8 }, (_, at) => String(at % 2));
    expect([
      isFlagLike(factsOf(...ones)),
      isFlagLike(factsOf("41.0", "41.0", "41.0", "41.0", "41.0", "41.0")),
    ]).toEqual([true, false]);
    expect(risingShare(factsOf("1", "2", "2", "3", "4"))).toBe(0.75);
  });
});
