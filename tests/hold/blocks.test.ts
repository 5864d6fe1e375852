import { describe, expect, it } from "vitest";
import { blockCount, blocksOf, flat, undisturbedInside } from "../../src/hold/blocks.ts";
import { pointsOf } from "./constructed.ts";

describe("blocks", () => {
  const points = pointsOf((m) => (m < 300 ? 40 : 41), { until: 599 });
  const marks = new Uint8Array(600).fill(1, 100, 110);
  const stretch = { from: 0, to: 599 };
  const picked = undisturbedInside(points, stretch, marks);

  it("leave disturbed points out", () => {
    expect(picked).toHaveLength(590);
    expect(picked).not.toContain(105);
  });

  it("give middle, lowest and highest of each piece, less a course", () => {
    const blocks = blocksOf(points, picked, stretch, 2, flat);
    expect(blocks.map(({ middle, low, high }) => [middle, low, high])).toEqual([
      [40, 40, 40],
      [41, 41, 41],
    ]);
    expect(blocksOf(points, picked, stretch, 2, () => 40)[1]!.middle).toBe(1);
  });

  it("are about as long as the slowest cycle, three to sixteen of them", () => {
    expect(blockCount({ from: 0, to: 60 }, 60)).toBe(3);
    expect(blockCount({ from: 0, to: 600 }, 600)).toBe(6);
    expect(blockCount({ from: 0, to: 9000 }, 9000)).toBe(16);
  });
});
