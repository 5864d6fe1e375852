import { describe, expect, it } from "vitest";
import { findSplitDecimals, joinDecimals } from "../../../src/readings/text/split-decimals.ts";

const rows = (...lines: string[]) =>
  lines.map((line, at) => ({ cells: line.split(","), line: at + 1 }));

describe("findSplitDecimals", () => {
  it("sees rows with more cells than the heading by their pairs", () => {
    expect(findSplitDecimals(rows("22:00,21,5", "22:30,41,2"), ["time", "temp", ""], ",")).toEqual({
      width: 3,
      numbers: 1,
    });
    expect(findSplitDecimals(rows("22:00,21,5,20,1"), ["time", "a", "b"], ",")).toEqual({
      width: 5,
      numbers: 2,
    });
  });
  it("sees single digits after a clock without heading", () => {
    expect(findSplitDecimals(rows("22:00,21,5", "22:30,41,2"), null, ",")).toEqual({
      width: 3,
      numbers: 1,
    });
  });
  it("leaves other files alone", () => {
    expect(findSplitDecimals(rows("22:00,21.5,20"), ["time", "a", "b"], ",")).toBeNull();
    expect(findSplitDecimals(rows("22:00,41,40", "22:30,41,39"), null, ",")).toBeNull();
    expect(findSplitDecimals(rows("22:00,21,5"), ["time", "temp", ""], ";")).toBeNull();
  });
});

describe("joinDecimals", () => {
  it("joins rows of that width only", () => {
    expect(joinDecimals(["22:00", "21", "5"], { width: 3, numbers: 1 })).toEqual(["22:00", "21,5"]);
    expect(joinDecimals(["22:00", "21"], { width: 3, numbers: 1 })).toEqual(["22:00", "21"]);
  });
});
