import { describe, expect, it } from "vitest";
import { columnsNamed, speakingNames } from "../../../src/readings/columns/named-columns.ts";

describe("columnsNamed", () => {
  const names = ["Time", "Jar (°C)", "Bath (°C)", "column 4"];
  it.each([
    ["jar (°c)", [1]],
    ["Bath", [2]],
    ["column 4", [3]],
    ["2", [1]],
    ["9", []],
    ["Room", []],
  ])("%s", (name, columns) => {
    expect(columnsNamed(name, names)).toEqual(columns);
  });
});

describe("speakingNames", () => {
  it("numbers what has no heading", () => {
    expect(speakingNames(["Time", ""], 3)).toEqual(["Time", "column 2", "column 3"]);
    expect(speakingNames(null, 1)).toEqual(["column 1"]);
  });
});
