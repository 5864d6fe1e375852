import { describe, expect, it } from "vitest";
import { columnFacts, isIndex } from "../../../src/readings/columns/column-facts.ts";
import { fullHeading, kindsOf, listed, takeSample } from "../../../src/readings/columns/sample.ts";

const taken = (text: string, decimal?: ",") =>
  takeSample("f.csv", text, decimal === undefined ? {} : { decimal });

describe("takeSample", () => {
  it("cuts the text into heading, units and rows without summary lines", () => {
    const outcome = taken("time;CH1;CH2\n;C;V\n0;21,5;3\n1;41,2;3\n2;41,0;3\nAverage;34,6;3\n");
    if (!outcome.ok) throw new Error(outcome.problem.code);
    expect(outcome.value.rows).toHaveLength(3);
    expect(fullHeading(outcome.value.layout, 1)).toBe("CH1 [C]");
    expect(kindsOf(outcome.value)).toEqual(["time", "temperature", "other"]);
  });
  it("asks for the decimal sign of numbers cut in two, and joins them when it is said", () => {
    const text = "time,temp\n22:00,21,5\n22:30,41,2\n";
    expect(taken(text)).toMatchObject({
      ok: false,
      problem: { code: "decimal-undecidable", facts: { line: 2, found: "21,5" } },
    });
    expect(taken(text, ",")).toMatchObject({
      ok: true,
      value: { columnCount: 2, rows: [{ cells: ["22:00", "21,5"] }, {}] },
    });
  });
  it("keeps neighbours together in a long file, so that row numbers show", () => {
    const text = Array.from({ length: 9000 }, (_, row) => `${row + 1},38.${row % 7}`).join("\n");
    const found = taken(`${text}\n`);
    if (!found.ok) throw new Error(found.problem.code);
    expect(found.value.rows.length).toBeLessThan(1500);
    const facts = columnFacts(found.value.rows, 0, ".");
    expect(isIndex(facts)).toBe(true);
  });
  it("knows a heading without rows", () => {
    expect(taken("time,temp\n")).toMatchObject({
      ok: false,
      problem: { code: "too-few-readings" },
    });
  });
  it("finds no rows in prose", () => {
    expect(taken("Dear friend\nhow are you\n")).toMatchObject({
      ok: false,
      problem: { code: "no-temperature-column" },
    });
  });
});

describe("listed", () => {
  it("keeps a long list short", () => {
    expect(listed(["a", "b"])).toBe('"a", "b"');
    expect(listed(Array.from({ length: 20 }, () => "a")).endsWith("and more")).toBe(true);
  });
});
