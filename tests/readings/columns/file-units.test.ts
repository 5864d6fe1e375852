import { describe, expect, it } from "vitest";
import { settleUnits } from "../../../src/readings/columns/file-units.ts";
import { makePlan } from "../../../src/readings/columns/plan.ts";
import { createRowReader } from "../../../src/readings/rows/row-reader.ts";
import type { TemperatureUnit } from "../../../src/quantity.ts";

const settled = (heading: string, values: number[], said?: TemperatureUnit) => {
  const lines = values.map((value, at) => `22:${10 + at},${value}`);
  const plan = makePlan("f.csv", [`time,${heading}`, ...lines].join("\n"), {});
  if (!plan.ok) throw new Error(plan.problem.code);
  const reader = createRowReader(plan.value);
  for (const [at, line] of lines.entries()) reader.row(line.split(","), at + 2);
  return settleUnits("f.csv", plan.value, reader.finish(), said);
};

describe("settleUnits", () => {
  it("written, then said, then from the values", () => {
    expect(settled("T1 (°F)", [70, 106, 106])).toMatchObject({
      value: { units: ["degF"], notices: [] },
    });
    expect(settled("T1", [60, 60, 60], "degF")).toMatchObject({
      value: { units: ["degF"], notices: [] },
    });
    expect(settled("T1", [21, 41, 41])).toMatchObject({ value: { units: ["degC"], notices: [] } });
    expect(settled("T1", [70, 106, 106])).toMatchObject({
      value: { units: ["degF"], notices: [{ code: "unit-inferred", facts: { middle: 106 } }] },
    });
  });
  it("asks, and does not let an option overrule what is written", () => {
    expect(settled("T1", [60, 60, 60])).toMatchObject({
      problem: { code: "unit-undecidable", facts: { middle: 60 } },
    });
    expect(settled("T1 (°C)", [21, 41, 41], "degF")).toMatchObject({
      problem: { code: "options-contradict", facts: { first: "--unit F" } },
    });
  });
});
