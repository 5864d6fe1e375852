import { describe, expect, it } from "vitest";
import { recheckAdvice } from "../../src/advice/recheck-advice.ts";
import { findCulture } from "../../src/culture/catalogue.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, failedTest, settledTest } from "./constructed.ts";
import { batch } from "./constructed-batches.ts";

const known = findCulture("reuteri");
if (!known.ok) throw new Error("the catalogue has lost a culture");
const culture = { ...known.value, id: "window" };
const log = [
  batch({ date: "2026-05-20", separated: "none" }),
  batch({ date: "2026-05-24", separated: "much" }),
  batch({ date: "2026-05-28", separated: "much" }),
];
const adviceOn = (
  tests: Parameters<typeof adviceInput>[0]["tests"],
  appliance: string | null = null,
) => {
  const input = adviceInput({
    requirements: [asked(36.5, 39.5, 12)],
    tests: tests ?? [],
    appliance,
  });
  return recheckAdvice({
    ...input,
    kitchen: { ...input.kitchen, cultures: [culture], batches: log },
  });
};
const on = (id: string, day: string, level = 38) =>
  settledTest({ id, level, startedAt: Date.parse(`${day}T20:00:00Z`) });

/** Three batches, two separated, then a test: constructed nights and log. */
describe("recheckAdvice", () => {
  it("asks for a test after two of three batches separated", () => {
    const { due, rechecks } = adviceOn([on("baseline", "2026-05-01")]);
    expect(rechecks).toEqual([]);
    expect(due).toHaveLength(1);
    expect(due[0]!.lastTested).toBe("2026-05-01");
    expect(due[0]!.reasons.map(({ code }) => code)).toContain("separated-later");
  });

  it("answers once it was done: not moved, so look elsewhere", () => {
    const { due, rechecks, findings } = adviceOn([
      on("baseline", "2026-05-01"),
      on("again", "2026-05-30", 38.05),
    ]);
    expect(due).toEqual([]);
    expect(rechecks[0]).toMatchObject({ newest: { testId: "again" } });
    expect(rechecks[0]!.word).not.toBe("moved");
    expect(findings[0]).toMatchObject({ batches: 3, separated: 2, now: { verdict: "holds" } });
  });

  it("does not take a test that never settled for one", () => {
    const { due } = adviceOn([failedTest("failed")]);
    expect(due[0]!.reasons.map(({ code }) => code)).toContain("never-tested");
  });

  it("keeps to the appliance asked for", () => {
    expect(adviceOn([], "box")).toEqual({ rechecks: [], due: [], findings: [] });
  });
});
