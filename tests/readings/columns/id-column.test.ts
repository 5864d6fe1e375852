import { describe, expect, it } from "vitest";
import { makePlan } from "../../../src/readings/columns/plan.ts";

const idOf = (heading: string, cell: (row: number) => string, column = "Temp C") => {
  const rows = Array.from(
    { length: 12 },
    (_, row) => `22:${10 + row},${cell(row)},${38 + row / 10}`,
  );
  const plan = makePlan("f.csv", [`time,${heading},${column}`, ...rows].join("\n"), {});
  if (!plan.ok) throw new Error(plan.problem.code);
  return plan.value;
};

describe("findIdColumn", () => {
  it.each([
    ["Sensor", (row: number) => ["jar", "bath"][row % 2]!],
    ["channel", (row: number) => String(1 + (row % 3))],
    ["Sensor ID", (row: number) => String(10_442 + (row % 3))],
    ["mote_id", () => "1"],
  ])("%s", (heading, cell) => {
    const plan = idOf(heading, cell);
    expect(plan.idColumn).toEqual({ column: 1, heading });
    expect(plan.probes.map(({ column }) => column)).toEqual([2]);
  });
  it.each([
    ["a probe's own readings", "Sensor 1", (row: number) => (37 + row / 10).toFixed(1)],
    ["remarks", "Remark", (row: number) => (row % 2 === 0 ? "lid" : "stirred")],
    ["a probe of whole degrees", "Probe 1", (row: number) => String(12 + (row % 3))],
    ["a sensor's state", "Sensor status", (row: number) => ["ok", "stop"][row % 2]!],
    ["states", "Heater", (row: number) => String(row % 2)],
  ])("none in %s", (_, heading, cell) => {
    expect(idOf(heading, cell).idColumn).toBeNull();
  });
  it("none where it is the only column that can be read", () => {
    const plan = makePlan("f.csv", "time,Probe\n22:00,1\n22:30,2\n23:00,4\n23:30,5\n", {});
    expect(plan.ok && plan.value.idColumn).toBeNull();
    expect(plan.ok && plan.value.probes.map(({ column }) => column)).toEqual([1]);
  });
  it("more names than a test has sensors are none", () => {
    const rows = Array.from({ length: 50 }, (_, row) => `a${row},22:${10 + row},38.${row}`);
    const plan = makePlan("f.csv", ["name,time,temp C", ...rows].join("\n"), {});
    expect(plan.ok && plan.value.idColumn).toBeNull();
  });
});
