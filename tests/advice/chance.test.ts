import { describe, expect, it } from "vitest";
import { chanceOf, heatEnds, probabilityAt } from "../../src/advice/chance.ts";
import type { Expected } from "../../src/advice/expected.ts";
import { endedByPerson } from "../../src/culture/verdict.ts";
import { normalCdf } from "../../src/stats/normal.ts";
import { studentTCdf } from "../../src/stats/student-t.ts";
import { asked } from "../culture/nights.ts";
import {
  adviceInput,
  cooker,
  known,
  settledTest,
  step,
  type ConstructedTest,
} from "./constructed.ts";

const requirement = asked(37, 39, 12, 43);
const knownOf = (tests: readonly ConstructedTest[]) =>
  known(
    cooker(),
    adviceInput({
      requirements: [requirement],
      tests: tests.map((one, at) => settledTest({ id: `${at}`, ...one })),
    }),
  );
const setUp = { appliance: "cooker", setting: step(40), container: "jars" };
const level = (mean: number, scale: number, degreesOfFreedom = Infinity): Expected => ({
  mean,
  scale,
  degreesOfFreedom,
  room: 0,
  thermometer: { standardUncertainty: 0, halfWidth: null },
});
const confidence = 0.95;

describe("probabilityAt", () => {
  // A hold that does not move at all: the requirement is met where the level lies in the window.
  const flat = knownOf([{ level: 38, hoursHeld: 40 }]).shapeOf(setUp);
  const { gathered } = flat.outlook(requirement);

  it("is the normal probability of the window for a level that is normal", () => {
    const { probability } = probabilityAt(level(38.6, 0.5), flat, gathered);
    const exact = normalCdf((39 - 38.6) / 0.5) - normalCdf((37 - 38.6) / 0.5);
    // The flat hold still wanders by the hundredth of a degree its readings show.
    expect(Math.abs(probability - exact)).toBeLessThan(0.02);
  });

  it("is Student's t where the scatter is known from few tests", () => {
    for (const mean of [38, 38.8, 39.4]) {
      const { probability } = probabilityAt(level(mean, 0.6, 5), flat, gathered);
      const exact = studentTCdf((39 - mean) / 0.6, 5) - studentTCdf((37 - mean) / 0.6, 5);
      // Seven scales stand for all of them.
      expect(Math.abs(probability - exact)).toBeLessThan(0.025);
    }
  });

  it("takes a specification for the rectangle it is", () => {
    const found = probabilityAt(
      { ...level(38, 1e-3), thermometer: { standardUncertainty: 2 / Math.sqrt(3), halfWidth: 2 } },
      flat,
      gathered,
    );
    // Half of +-2 lies within the window's +-1.
    expect(Math.abs(found.probability - 0.5)).toBeLessThan(0.02);
  });
});

describe("chanceOf", () => {
  const settled = knownOf([{ level: 38 }]);
  const asking = { response: settled.response, confidence };

  it("holds in the middle of the window and misses far from it", () => {
    const shape = settled.shapeOf(setUp);
    expect(chanceOf(requirement, level(38, 0.2), shape, asking).verdict).toBe("holds");
    expect(chanceOf(requirement, level(36, 0.2), shape, asking).verdict).toBe("misses");
    expect(chanceOf(requirement, level(39, 0.2), shape, asking).verdict).toBe("unproven");
    expect(chanceOf(requirement, level(60, 0.2), shape, asking)).toEqual({
      probability: 0,
      ceilingRisk: 1,
      verdict: "misses",
    });
    expect(chanceOf(requirement, level(20, 0.2), shape, asking).ceilingRisk).toBe(0);
  });

  it("knows the risk of a ceiling far above the window too", () => {
    const shape = settled.shapeOf(setUp);
    const high = asked(37, 39, 12, 60);
    // The level lies on the ceiling, less the hundredths by which the flat hold wanders.
    const { ceilingRisk } = chanceOf(high, level(60, 0.2), shape, asking);
    expect(Math.abs(ceilingRisk! - 0.5)).toBeLessThan(0.2);
    const without = asked(37, 39, 12);
    expect(chanceOf(without, level(60, 0.2), shape, asking).ceilingRisk).toBeNull();
  });

  it("knows the risk of the ceiling", () => {
    const shape = settled.shapeOf(setUp);
    const { ceilingRisk } = chanceOf(requirement, level(43, 0.5), shape, asking);
    expect(Math.abs(ceilingRisk! - 0.5)).toBeLessThan(0.1);
    expect(chanceOf(requirement, level(38, 0.5), shape, asking).ceilingRisk).toBeLessThan(0.01);
  });

  it("never holds on assumption alone, nor on too little hold", () => {
    const untested = knownOf([]);
    const sure = level(38, 0.01);
    const found = chanceOf(requirement, sure, untested.shapeOf(setUp), {
      response: untested.response,
      confidence,
    });
    expect(found.verdict).toBe("unproven");
    const short = knownOf([{ level: 38, hoursHeld: 2 }]);
    expect(short.response.tests[0]!.settled.tooLittle).toBe(true);
    expect(
      chanceOf(requirement, sure, short.shapeOf(setUp), { response: short.response, confidence })
        .verdict,
    ).not.toBe("holds");
  });

  it("gives a heat that ends by itself the person's share of the chance", () => {
    const ending = knownOf([{ level: 38, switchedOffAfter: 8 }]);
    const shape = ending.shapeOf(setUp);
    const { gathered } = shape.outlook(requirement);
    const found = chanceOf(requirement, level(38, 0.1), shape, {
      response: ending.response,
      confidence,
    });
    expect(found.probability).toBeCloseTo(
      endedByPerson * probabilityAt(level(38, 0.1), shape, gathered).probability,
      9,
    );
    expect(found.verdict).not.toBe("holds");
  });

  it("misses for an ended heat only where it would have missed anyway, as the verdicts do", () => {
    const ending = knownOf([{ level: 38, switchedOffAfter: 8 }]);
    const inEnding = { response: ending.response, confidence };
    const word = (mean: number) =>
      chanceOf(requirement, level(mean, 0.5), ending.shapeOf(setUp), inEnding).verdict;
    // 0.16 of the level's distribution lies in the window; a fifth of that is below 0.05.
    expect(word(39.5)).toBe("unproven");
    expect(word(41)).toBe("misses");
  });
});

describe("heatEnds", () => {
  it("takes the longest test's word", () => {
    const ending = { level: 38, switchedOffAfter: 8 };
    expect(heatEnds(knownOf([ending]).response, 12)?.id).toBe("0");
    expect(heatEnds(knownOf([ending]).response, 6)).toBeNull();
    expect(heatEnds(knownOf([ending, { level: 38, hoursHeld: 14 }]).response, 12)).toBeNull();
    expect(heatEnds(knownOf([]).response, 12)).toBeNull();
  });
});
