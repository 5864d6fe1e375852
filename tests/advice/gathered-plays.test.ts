import { describe, expect, it } from "vitest";
import { gatherPlays, gatheredProbability } from "../../src/advice/gathered-plays.ts";
import { weightedProbability, type ScenarioPlay } from "../../src/culture/probability.ts";
import { shiftedPlays } from "../../src/culture/shifted-hold.ts";
import { createRandom } from "../simulator/random.ts";

// Constructed plays; the reference is the sum over all plays that the grid stands for.
const random = createRandom(41, "gathered plays");
const play = (): ScenarioPlay => {
  const from = -2 + 1.5 * random.uniform(0, 1);
  const to = from + 2 * random.uniform(0, 1);
  const gap = random.uniform(0, 1);
  return {
    intervals: [
      { from, to },
      { from: to + gap, to: to + gap + 0.3 },
    ],
    belowCeiling: 1 + random.uniform(0, 1),
  };
};
const parts = [
  { weight: 0.25, plays: Array.from({ length: 40 }, play) },
  { weight: 0.75, plays: Array.from({ length: 70 }, play) },
];

describe("gatheredProbability", () => {
  it.each([
    [0, { halfWidth: 0, standardDeviation: 0.1 }],
    [0.37, { halfWidth: 0, standardDeviation: 0.3 }],
    [-1.213, { halfWidth: 0.5, standardDeviation: 0.3 }],
    [5, { halfWidth: 1, standardDeviation: 0.05 }],
  ])("is the sum over all plays, moved by %s, %j", (by, offset) => {
    const moved = parts.map((part) => ({ ...part, plays: shiftedPlays(part.plays, by) }));
    const exact = weightedProbability(moved, offset);
    const found = gatheredProbability(gatherPlays(parts), by, offset);
    // Second order in the grid's width over the deviation: (0.02 / 0.1)^2 / 24 of a density below 4.
    expect(Math.abs(found.met - exact.met)).toBeLessThan(2e-4);
    expect(Math.abs(found.ceilingPassed! - exact.ceilingPassed!)).toBeLessThan(2e-4);
  });

  it("knows no ceiling where there is none, and takes plays that nothing meets", () => {
    const open = [{ weight: 1, plays: [{ intervals: [], belowCeiling: Infinity }] }];
    expect(
      gatheredProbability(gatherPlays(open), 0, { halfWidth: 0, standardDeviation: 1 }),
    ).toEqual({ met: 0, ceilingPassed: null });
  });

  it("takes intervals without an end", () => {
    const all = [
      { weight: 1, plays: [{ intervals: [{ from: -Infinity, to: Infinity }], belowCeiling: 0 }] },
    ];
    const found = gatheredProbability(gatherPlays(all), 0, { halfWidth: 0, standardDeviation: 1 });
    expect(found.met).toBeCloseTo(1, 9);
    expect(found.ceilingPassed).toBeCloseTo(0.5, 6);
  });
});
