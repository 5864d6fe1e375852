import { describe, expect, it } from "vitest";
import { disturbanceCause } from "../../src/hold/disturbance-cause.ts";
import { interrupted, pointsOf } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const causeOf = (length: number, tau: number): string => {
  const points = pointsOf(
    interrupted(() => 41, 100, length, tau, 10),
    { until: 300 },
  );
  return disturbanceCause(points, flatLevel(), 100, 250, 20);
};

describe("disturbanceCause", () => {
  it("goes by speed and depth of the fall", () => {
    expect(causeOf(40, 300)).toBe("power-cut");
    expect(causeOf(5, 60)).toBe("lid-lifted");
    expect(causeOf(5, 3)).toBe("probe-out");
  });
});
