import { describe, expect, it } from "vitest";
import { marked } from "../../src/hold/disturbance.ts";
import { pointsOf } from "./constructed.ts";

describe("marked", () => {
  it("flags the points of every disturbance, both ends included", () => {
    const points = pointsOf(() => 41, { until: 9 });
    const one = { first: 2, last: 3, clear: 2, final: false };
    const flags = marked(points, [one, { ...one, first: 9, last: 9 }]);
    expect([...flags]).toEqual([0, 0, 1, 1, 0, 0, 0, 0, 0, 1]);
  });
});
