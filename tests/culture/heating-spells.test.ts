import { describe, expect, it } from "vitest";
import {
  gapOf,
  heldLevel,
  heldLevelAtMost,
  longestSpell,
} from "../../src/culture/heating-spells.ts";
import { createRandom } from "../simulator/random.ts";

const log = (minutes: readonly number[], celsius: readonly number[]) => ({
  minutes: Float64Array.from(minutes),
  celsius: Float64Array.from(celsius),
});

/** Readings a minute apart. */
const everyMinute = (...celsius: number[]) =>
  log(
    celsius.map((_, index) => index),
    celsius,
  );

/** Straight between readings, looked at every thousandth of a minute: an exhaustive search. */
const atThousandths = ({ minutes, celsius }: ReturnType<typeof log>): number[] => {
  const found: number[] = [];
  for (let index = 1; index < minutes.length; index += 1) {
    const steps = Math.round((minutes[index]! - minutes[index - 1]!) * 1000);
    for (let step = index === 1 ? 0 : 1; step <= steps; step += 1)
      found.push(celsius[index - 1]! + ((celsius[index]! - celsius[index - 1]!) * step) / steps);
  }
  return found;
};

const searched = (course: readonly number[], level: number): number => {
  let [best, run] = [0, 0];
  for (const value of course) {
    run = value >= level ? run + 1 : 0;
    best = Math.max(best, run - 1);
  }
  return best / 1000;
};

const randomLog = (seed: number) => {
  const draw = createRandom(seed, "spells");
  return everyMinute(...Array.from({ length: 25 }, () => draw.uniform(80, 100)));
};

describe("longestSpell", () => {
  it("interpolates both crossings", () => {
    // Up through 90 half-way in the first minute, down through it a quarter into the last.
    const spell = longestSpell(everyMinute(88, 92, 92, 91, 87), 90);
    expect(spell).toEqual({ fromMinute: 0.5, toMinute: 3.25, minutes: 2.75 });
  });

  it("is broken by a single reading below", () => {
    const spell = longestSpell(everyMinute(90, 90, 90, 89.9, 90, 90), 90);
    expect(spell).toEqual({ fromMinute: 0, toMinute: 2, minutes: 2 });
  });

  it("is null where the level was never reached, and of no length at a lone peak", () => {
    expect(longestSpell(everyMinute(80, 89.9, 80), 90)).toBeNull();
    expect(longestSpell(everyMinute(80, 90, 80), 90)?.minutes).toBe(0);
  });

  it("is broken by a gap, and bridges it only where told to", () => {
    const gapped = log([0, 1, 2, 3, 13, 14, 15], [80, 91, 91, 91, 91, 91, 80]);
    expect(gapOf(gapped)).toBe(5);
    expect(longestSpell(gapped, 90)?.toMinute).toBe(3);
    const bridged = longestSpell(gapped, 90, "bridge");
    expect(bridged?.fromMinute).toBeCloseTo(10 / 11, 12);
    expect(bridged?.toMinute).toBeCloseTo(14 + 1 / 11, 12);
  });

  it("counts a gap after hot readings only where told to", () => {
    const gapped = log([0, 1, 2, 3, 13, 14], [80, 91, 91, 91, 40, 40]);
    expect(longestSpell(gapped, 90)?.toMinute).toBe(3);
    expect(longestSpell(gapped, 90, "bridge")?.toMinute).toBe(13);
  });

  it("agrees with an exhaustive search on constructed random logs", () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const random = randomLog(seed);
      const level = 85 + (seed % 10);
      const found = longestSpell(random, level)?.minutes ?? 0;
      // The search sees whole thousandths of a minute, so it may miss one at each end.
      expect(Math.abs(found - searched(atThousandths(random), level))).toBeLessThan(0.0021);
    }
  });
});

describe("heldLevel", () => {
  it("is the plateau's lowest reading where it was held just as long", () => {
    expect(heldLevel(everyMinute(20, 91, 90.5, 92, 20), 2)).toBeCloseTo(90.5, 6);
  });

  it("is null where the log is shorter", () => {
    expect(heldLevel(everyMinute(90, 90), 2)).toBeNull();
  });

  it("agrees with an exhaustive search for the highest window's minimum", () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const random = randomLog(seed);
      const course = atThousandths(random);
      let best = -Infinity;
      for (let from = 0; from + 3000 < course.length; from += 5) {
        let low = Infinity;
        for (let at = from; at <= from + 3000; at += 5) low = Math.min(low, course[at]!);
        best = Math.max(best, low);
      }
      // Windows every 5 thousandths: at up to 20 degC a minute a tenth of a degree.
      expect(Math.abs(heldLevel(random, 3)! - best)).toBeLessThan(0.11);
    }
  });
});

describe("heldLevelAtMost", () => {
  it("is the held level where the log hides nothing", () => {
    const whole = everyMinute(20, 91, 90.5, 92, 20);
    expect(heldLevelAtMost(whole, 2)).toBeCloseTo(heldLevel(whole, 2)!, 6);
  });

  it("is as warm as the log's ends: it may have been so for hours", () => {
    expect(heldLevelAtMost(everyMinute(20, 60, 91), 10)).toBe(91);
    expect(heldLevelAtMost(everyMinute(93, 60, 20), 10)).toBe(93);
  });

  it("takes a gap for as warm as its warmer side", () => {
    const gapped = log([0, 1, 2, 3, 13, 14, 15, 16], [20, 60, 91, 92, 40, 30, 20, 20]);
    expect(heldLevel(gapped, 10)).toBeNull();
    expect(heldLevelAtMost(gapped, 10)).toBeCloseTo(92, 6);
  });
});
