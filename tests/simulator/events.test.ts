import { describe, expect, it } from "vitest";
import { sampleDisturbances, sampleTestPlan } from "./events.ts";
import { createRandom } from "./random.ts";

const draws = 4000;

describe("sampleDisturbances", () => {
  const hold = { from: 7200, to: 40_000, logTo: 40_000 };
  const drawn = Array.from({ length: draws }, (_, seed) =>
    sampleDisturbances(createRandom(seed, "events"), hold),
  );
  const share = (met: (item: (typeof drawn)[number]) => boolean): number =>
    drawn.filter(met).length / draws;

  it("happen in 10 to 15 % of the tests each", () => {
    // Standard error of a share of 0.13 in 4000: 0.0053.
    for (const happened of [
      share(({ lidOpen }) => lidOpen.length > 0),
      share(({ powerCuts }) => powerCuts.length > 0),
      share(({ pulledAt }) => pulledAt !== null),
    ]) {
      expect(happened).toBeGreaterThan(0.1);
      expect(happened).toBeLessThan(0.155);
    }
  });

  it("lie within the hold, a lid before a power cut", () => {
    for (const { lidOpen, powerCuts, probeOut } of drawn) {
      for (const [from, to] of [...lidOpen, ...powerCuts]) {
        expect(from).toBeGreaterThan(hold.from);
        expect(to).toBeLessThan(hold.to);
        expect(to).toBeGreaterThan(from);
      }
      if (lidOpen[0] && powerCuts[0]) expect(lidOpen[0][1]).toBeLessThan(powerCuts[0][0]);
      if (probeOut.length > 0) expect(probeOut).toEqual(lidOpen);
    }
  });

  it("leave a hold that ends before the log alone at its end", () => {
    const off = { ...hold, to: 30_000 };
    for (let seed = 0; seed < 500; seed += 1)
      expect(sampleDisturbances(createRandom(seed, "events"), off).pulledAt).toBeNull();
  });
});

describe("sampleTestPlan", () => {
  const plans = Array.from({ length: draws }, (_, seed) =>
    sampleTestPlan(createRandom(seed, "plan"), false),
  );

  it("tests for 3 to 30 h, mostly 7 to 14", () => {
    const hours = plans.map(({ logTo }) => logTo / 3600);
    expect(Math.min(...hours)).toBeGreaterThanOrEqual(3);
    expect(Math.max(...hours)).toBeLessThanOrEqual(30);
    // 0.70 drawn there; standard error 0.0072.
    const usual = hours.filter((length) => length >= 7 && length <= 14).length / draws;
    expect(Math.abs(usual - 0.7)).toBeLessThan(0.033);
  });

  it("starts the logger early or late now and then", () => {
    const early = plans.filter(({ logFrom }) => logFrom < -200).length / draws;
    const late = plans.filter(({ logFrom }) => logFrom > 0).length / draws;
    expect(Math.abs(early - 0.15 * 0.96)).toBeLessThan(0.026);
    expect(Math.abs(late - 0.04)).toBeLessThan(0.014);
  });

  it("switches a program off before the log ends", () => {
    for (let seed = 0; seed < 200; seed += 1) {
      const { switchOff, logTo } = sampleTestPlan(createRandom(seed, "plan"), true);
      expect(switchOff).toBeGreaterThan(0.4 * logTo);
      expect(switchOff).toBeLessThan(logTo);
    }
  });
});
