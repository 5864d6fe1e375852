import { describe, expect, it } from "vitest";
import { makePlan } from "../../../src/readings/columns/plan.ts";
import { createRowReader } from "../../../src/readings/rows/row-reader.ts";

const head = "Boot\ntime,T1 (°C)\n22:00,21.5\n22:30,41.2\n23:00,41.0\n";
const rowsOf = (...lines: string[]) => {
  const plan = makePlan("f.csv", head, {});
  if (!plan.ok) throw new Error(plan.problem.code);
  const reader = createRowReader(plan.value);
  for (const [at, line] of lines.entries()) reader.row(line.split(","), at + 3);
  return reader.finish();
};

describe("createRowReader", () => {
  it("keeps rows with a time and counts the others by what follows them", () => {
    const rows = rowsOf(
      "22:00,21.5",
      "Boot",
      "time,T1 (°C)",
      "22:30,41.2",
      "Notice: lid",
      "2x:40,41",
      "23:00,41",
      "Average,34.6",
    );
    expect(rows.rowsRead).toBe(8);
    expect([...rows.lines]).toEqual([3, 6, 9]);
    expect(rows.tally.list()).toEqual([
      { reason: "repeated-header", count: 2, firstLine: 4 },
      { reason: "unparseable-time", count: 2, firstLine: 7 },
      { reason: "trailer", count: 1, firstLine: 10 },
    ]);
  });
  it("notices a heading in another unit", () => {
    expect(rowsOf("22:00,21.5", "time,Temp (°F)", "22:30,106").otherUnit).toEqual({
      line: 4,
      found: "Temp (°F)",
    });
  });
});
