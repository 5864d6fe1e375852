import { describe, expect, it } from "vitest";
import { changePoints } from "../../src/stats/change-points.ts";
import { seededNormal } from "./seeded-noise.ts";

/** Levels each so many readings long, under noise. */
const steps = (
  stretches: readonly (readonly [level: number, length: number])[],
  deviation: number,
  normal: () => number,
): Float64Array => {
  const levels = stretches.flatMap(([level, n]) => Array.from({ length: n }, () => level));
  return Float64Array.from(levels, (level) => level + deviation * normal());
};

describe("changePoints", () => {
  // Constructed: steps of ten noise deviations are placed to the reading.
  it("places clear changes exactly", () => {
    const values = steps(
      [
        [20, 60],
        [41, 100],
        [40, 80],
        [35, 7],
        [40, 50],
      ],
      0.1,
      seededNormal(1),
    );
    expect(changePoints(values)).toEqual([60, 160, 240, 247]);
  });

  it("places them exactly in a long series as well", () => {
    const stretches = [
      [22, 30_000],
      [41, 50_000],
      [40, 20_000],
      [36, 200],
      [40, 9_800],
    ] as const;
    expect(changePoints(steps(stretches, 0.1, seededNormal(2)))).toEqual([
      30_000, 80_000, 100_000, 100_200,
    ]);
  });

  // Constructed: the penalty 3 ln n is to keep noise from being cut up; a false
  // change in fewer than 5 of 100 series.
  it("does not cut up noise", () => {
    const normal = seededNormal(3);
    let cut = 0;
    for (let run = 0; run < 100; run++) {
      if (changePoints(steps([[40, 500]], 0.3, normal)).length > 0) cut++;
    }
    expect(cut).toBeLessThan(5);
  });

  it("finds none in flat, short or empty series", () => {
    expect(changePoints(new Float64Array(100).fill(40))).toEqual([]);
    expect(changePoints([40, 41, 42])).toEqual([]);
    expect(changePoints([])).toEqual([]);
  });
});
