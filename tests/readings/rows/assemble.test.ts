import { describe, expect, it } from "vitest";
import { assembleRows } from "../../../src/readings/rows/assemble.ts";
import { makePlan } from "../../../src/readings/columns/plan.ts";
import { createRowReader } from "../../../src/readings/rows/row-reader.ts";

const head = "time,A (°F),B (°F)\n22:00,70,71\n22:30,106,107\n23:00,106,107\n";

describe("assembleRows", () => {
  it("orders, converts, sets aside and shares the times where no cell lacks", () => {
    const plan = makePlan("f.csv", head, {});
    if (!plan.ok) throw new Error(plan.problem.code);
    const reader = createRowReader(plan.value);
    const lines = [
      "22:00,68,68",
      "22:10,104,",
      "22:20,ERR,999.9",
      "22:30,104,105.8",
      "22:40,104,105.8",
    ];
    for (const [at, line] of lines.entries()) reader.row(line.split(","), at + 2);
    const rows = reader.finish();
    const seconds = Float64Array.of(0, 600, 1200, 2400, 1800);
    const result = assembleRows(rows, { seconds }, ["degF", "degF"]);
    expect(result.rowsUsed).toBe(4);
    expect(rows.tally.list()).toEqual([{ reason: "text-flag", count: 1, firstLine: 4 }]);
    expect([...result.minutes]).toEqual([0, 10, 30, 40]);
    expect([...result.lines]).toEqual([2, 3, 6, 5]);
    expect(result.probes[0]!.minutes).toBe(result.minutes);
    expect(Array.from(result.probes[1]!.celsius, Math.round)).toEqual([20, 41, 41]);
    expect(result.probes[1]!.cellsSetAside).toEqual([
      { reason: "missing", count: 1, firstLine: 3 },
    ]);
    expect(result.order).toMatchObject({ moved: 1, firstMovedLine: 6 });
  });
});
