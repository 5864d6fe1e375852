import { describe, expect, it } from "vitest";
import { columnFacts } from "../../../src/readings/columns/column-facts.ts";
import { isSameInFahrenheit, runAlike } from "../../../src/readings/columns/likeness.ts";

const column = (values: readonly number[]) =>
  columnFacts(
    values.map((value, at) => ({ cells: [value.toFixed(1)], line: at + 1 })),
    0,
    ".",
  );
const warming = [21.5, 30, 37.2, 41.2, 41, 41.1];

describe("runAlike", () => {
  it("holds for a jar and its bath, not for humidity", () => {
    expect(runAlike(column(warming), column(warming.map((value) => value + 4)))).toBe(true);
    expect(runAlike(column(warming), column([45, 41, 38, 37, 36.9, 36.8]))).toBe(false);
    expect(runAlike(column(warming), column(warming.map((value) => value + 20)))).toBe(false);
  });
});

describe("isSameInFahrenheit", () => {
  it("sees one reading printed twice", () => {
    expect(
      isSameInFahrenheit(column(warming), column(warming.map((value) => value * 1.8 + 32))),
    ).toBe(true);
    expect(
      isSameInFahrenheit(column(warming), column(warming.map((value) => value * 1.8 + 36))),
    ).toBe(false);
  });
});
