import { describe, expect, it } from "vitest";
import { studyPlan } from "./plan.ts";

const plans = Array.from({ length: 2000 }, (_, seed) => studyPlan(seed + 1));
const share = (met: (plan: (typeof plans)[number]) => boolean): number =>
  plans.filter(met).length / plans.length;

// 2,000 draws: standard errors below 0.0112, limits at four of them.
describe("studyPlan", () => {
  it("is the same for the same seed", () => {
    expect(studyPlan(7)).toEqual(studyPlan(7));
  });

  it("draws promises and structures in the shares it states", () => {
    expect(share(({ promise }) => promise === "this run")).toBeCloseTo(0.55, 1);
    expect(Math.abs(share(({ variation }) => variation === null) - 0.52)).toBeLessThan(0.045);
    expect(Math.abs(share(({ room }) => room === "recorded") - 0.35)).toBeLessThan(0.045);
  });

  it("repeats and checks only in a kitchen, and lets only other runs scatter", () => {
    for (const { promise, tests, thermometer, runScatter } of plans) {
      if (promise === "this run") {
        expect([tests, thermometer === "checked", runScatter]).toEqual([1, false, 0]);
      } else {
        expect(thermometer).not.toBe("corrected");
        expect(runScatter).toBeGreaterThanOrEqual(0.08);
        expect(runScatter).toBeLessThanOrEqual(0.45);
      }
    }
  });
});
