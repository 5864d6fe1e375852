import { describe, expect, it } from "vitest";
import { columnFacts } from "../../../src/readings/columns/column-facts.ts";
import { probeColumns } from "../../../src/readings/columns/probe-columns.ts";
import { takeSample } from "../../../src/readings/columns/sample.ts";

const probes = (text: string, columns: number[]) => {
  const outcome = takeSample("f.csv", text, {});
  if (!outcome.ok) throw new Error(outcome.problem.code);
  const sample = outcome.value;
  const facts = Array.from({ length: sample.columnCount }, (_, at) =>
    columnFacts(sample.rows, at, "."),
  );
  return probeColumns(sample, facts, columns);
};

describe("probeColumns", () => {
  it("keeps one of a reading printed in both units", () => {
    const text = "time,T (°C),T (°F),Bath (°F)\n22:00,21.5,70.7,73.4\n22:30,41.2,106.2,109.4\n";
    expect(probes(text, [1, 2, 3]).map(({ column, unit }) => [column, unit])).toEqual([
      [1, "degC"],
      [3, "degF"],
    ]);
  });
  it("gives a column without a unit the one the file states", () => {
    expect(
      probes("time,T1 (°F),T2\n22:00,70.7,71.3\n22:30,106,107\n", [1, 2]).map(({ unit }) => unit),
    ).toEqual(["degF", "degF"]);
    expect(probes("Unit: F\ntime,T1\n22:00,50.25\n22:30,51\n", [1])).toMatchObject([
      { unit: "degF", printedStep: 0.01 },
    ]);
  });
});
