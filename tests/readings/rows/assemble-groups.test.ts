import { describe, expect, it } from "vitest";
import { makePlan } from "../../../src/readings/columns/plan.ts";
import { assembleGroups } from "../../../src/readings/rows/assemble-groups.ts";
import { createRowReader } from "../../../src/readings/rows/row-reader.ts";

const head = "time,A (°C),B (°C)\n22:00,38,39\n22:30,38.5,39\n23:00,38,39\n";
const plan = makePlan("f.csv", head, {});
if (!plan.ok) throw new Error(plan.problem.code);
const { probes } = plan.value;

const group = (id: string | null, seconds: number[], firstLine: number) => {
  const reader = createRowReader(plan.value);
  for (const at of seconds.keys())
    reader.row(["22:00", "38", at === 1 ? "x" : "39"], firstLine + at);
  return { id, rows: reader.finish(), seconds: Float64Array.from(seconds) };
};

describe("assembleGroups", () => {
  it("counts the minutes of all groups from the first reading of any", () => {
    const file = assembleGroups(
      [group("b", [600, 660, 720], 2), group("a", [540, 600], 5)],
      probes,
      ["degC", "degC"],
    );
    expect(
      file.probes.map(({ id, column, minutes }) => [id, column.bareName, [...minutes]]),
    ).toEqual([
      ["b", "A", [1, 2, 3]],
      ["b", "B", [1, 3]],
      ["a", "A", [0, 1]],
      ["a", "B", [0]],
    ]);
    expect(file).toMatchObject({
      rowsUsed: 5,
      firstSecond: 540,
      moved: 0,
      gaps: null,
      medianStep: 1,
    });
  });

  it("keeps one shared array of minutes for probes that lack nothing", () => {
    const [a] = assembleGroups([group(null, [0, 60, 120], 2)], probes, ["degC", "degC"]).probes;
    expect([...a!.minutes]).toEqual([0, 1, 2]);
  });

  it("tells the longest gap and counts all", () => {
    const steps = Array.from(
      { length: 30 },
      (_, at) => at * 60 + (at > 9 ? 900 : 0) + (at > 19 ? 1800 : 0),
    );
    expect(assembleGroups([group(null, steps, 2)], probes, ["degC", "degC"]).gaps).toEqual({
      count: 2,
      minutes: 31,
      firstLine: 22,
    });
  });
});
