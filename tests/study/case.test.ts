import { describe, expect, it } from "vitest";
import { studyCase } from "./case.ts";
import { studyPlan } from "./plan.ts";

const first = (met: (plan: ReturnType<typeof studyPlan>) => boolean): number => {
  for (let seed = 300; ; seed += 1) if (met(studyPlan(seed))) return seed;
};

describe("studyCase", () => {
  it("is the same record for the same seed", async () => {
    const seed = first(({ tests }) => tests === 2);
    expect(await studyCase(seed)).toEqual(await studyCase(seed));
  });

  it("answers one test by itself and three together, and records the nights it rests on", async () => {
    const [alone, together] = await Promise.all([
      studyCase(first(({ promise }) => promise === "this run")),
      studyCase(first(({ tests }) => tests === 3)),
    ]);
    expect([alone.problem, together.problem]).toEqual([null, null]);
    expect([alone.nights.length, together.nights.length]).toEqual([1, 3]);
    for (const { answer, truth, requirement } of [alone, together]) {
      expect(answer!.probability).toBeGreaterThanOrEqual(0);
      expect(answer!.probability).toBeLessThanOrEqual(1);
      const isInside = truth.lowest >= requirement.low && truth.highest <= requirement.high;
      if (isInside) expect(truth.insideShare).toBe(1);
    }
  });
});
