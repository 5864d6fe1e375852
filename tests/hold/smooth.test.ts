import { describe, expect, it } from "vitest";
import { smoothedWithin } from "../../src/hold/smooth.ts";
import { pointsOf } from "./constructed.ts";

describe("smoothedWithin", () => {
  it("keeps a straight course away from its ends and averages the rest", () => {
    const line = pointsOf((m) => 20 + m, { until: 20 });
    const smooth = smoothedWithin(line, 3).celsius;
    expect(smooth[10]).toBeCloseTo(30, 9);
    expect(smooth[0]).toBeCloseTo((20 + 21 + 22 + 23) / 4, 9);
  });

  it("leaves points alone that have no neighbour within reach", () => {
    const sparse = pointsOf((m) => 20 + (m % 20), { until: 100, step: 10 });
    expect([...smoothedWithin(sparse, 3).celsius]).toEqual([...sparse.celsius]);
  });
});
