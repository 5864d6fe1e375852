import { describe, expect, it } from "vitest";
import { recheckAll } from "../../src/advice/recheck.ts";
import { decide } from "../../src/culture/verdict.ts";
import { futureRun, runScatter } from "../../src/culture/run-to-run.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, settledTest } from "./constructed.ts";

const day = 86_400_000;
const rechecked = (levels: readonly number[], low: number, high: number) => {
  const input = adviceInput({
    requirements: [asked(low, high, 12)],
    tests: levels.map((level, at) => settledTest({ id: `${at}`, level, startedAt: at * 30 * day })),
  });
  return { input, found: recheckAll(input)[0]! };
};

/** Constructed nights; a flat hold's band is its level. */
describe("recheckCultures", () => {
  it("shows that a wide margin leaves room for what one cannot tell", () => {
    const { found } = rechecked([38, 38.1, 38.05], 34, 42);
    expect(found.cultures[0]!.margin).toBeCloseTo(4, 1);
    expect(found.cultures[0]!.word).toBe("not moved");
    expect(found.word).toBe("not moved");
  });

  it("cannot tell where half the margin is no more than the doubt", () => {
    const { found } = rechecked([38, 38.1], 37.6, 38.4);
    expect(found.cultures[0]!.word).toBe("cannot tell");
  });

  it("calls a proven move small beside the margin not moved for that culture", () => {
    const levels = [38, 38.01, 37.99, 38, 38.01, 37.99, 38, 38.01, 37.99, 39];
    const { found } = rechecked(levels, 30, 46);
    expect(found.level.low).toBeGreaterThan(0);
    expect(found.cultures[0]!.word).toBe("not moved");
    expect(rechecked(levels, 37, 39.5).found.cultures[0]!.word).toBe("moved");
  });

  it("has nothing to protect where the baseline lay outside", () => {
    const { found } = rechecked([36, 36.05], 37, 39);
    expect(found.cultures[0]!.margin).toBeLessThan(0);
    expect(found.cultures[0]!.word).toBe("cannot tell");
  });

  it("says what the newest test alone says", () => {
    const { input, found } = rechecked([38, 41], 37, 39);
    const { evidence } = input.tests[1]!.settled!;
    const { verdict, probability } = decide(input.requirements[0]!, {
      ...evidence,
      // One earlier test shows no scatter: it is assumed.
      runToRun: futureRun(runScatter([]), 1),
    });
    expect(found.cultures[0]!.now).toEqual({ verdict, probability });
    expect(verdict).toBe("misses");
  });
});
