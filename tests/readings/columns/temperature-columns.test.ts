import { describe, expect, it } from "vitest";
import { columnFacts } from "../../../src/readings/columns/column-facts.ts";
import { headingKind } from "../../../src/readings/columns/headings.ts";
import { findTemperatureColumns } from "../../../src/readings/columns/temperature-columns.ts";

const finding = (headings: string[], ...rows: string[][]) => {
  const records = rows.map((cells, at) => ({ cells, line: at + 2 }));
  const facts = headings.map((_, at) => columnFacts(records, at, "."));
  return findTemperatureColumns(facts, headings.map(headingKind));
};

describe("findTemperatureColumns", () => {
  it("goes by the headings first", () => {
    expect(
      finding(["Humidity", "Temp", "Battery"], ["41", "21.5", "30"], ["40", "41.2", "30"]),
    ).toEqual({ kind: "found", columns: [1] });
  });
  it("adds places whose values a thermometer could show", () => {
    expect(
      finding(
        ["Temp", "Room", "Channel"],
        ["21.5", "20.1", "7"],
        ["41.2", "20.2", "7"],
        ["41.2", "20.2", "7"],
        ["41.2", "20.2", "7"],
        ["41.2", "20.2", "7"],
        ["41.2", "20.3", "7"],
      ),
    ).toEqual({ kind: "found", columns: [0, 1] });
  });
  it("takes the only column left, and asks between unlike ones", () => {
    expect(finding(["", ""], ["1", "21.5"], ["2", "41.2"], ["3", "41.0"])).toEqual({
      kind: "found",
      columns: [1],
    });
    expect(finding(["", ""], ["45.1", "21.5"], ["44.2", "41.2"], ["40.1", "41.0"])).toEqual({
      kind: "undecidable",
      columns: [0, 1],
    });
  });
  it("finds none among words", () => {
    expect(finding(["", ""], ["a", "b"], ["c", "d"])).toEqual({ kind: "none" });
  });
});
