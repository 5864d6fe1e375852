import { describe, expect, it } from "vitest";
import { findHoldEnd } from "../../src/hold/hold-end.ts";
import { coolingFrom, pointsOf } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const fallAt = (first: number) => ({
  first,
  last: 600,
  clear: first,
  cause: "power-cut" as const,
  final: true,
});

describe("findHoldEnd", () => {
  it("goes back from the visible fall to its onset", () => {
    const points = pointsOf(
      coolingFrom(() => 41, 400, 400),
      { until: 600, noise: 0.05 },
    );
    const end = findHoldEnd(points, flatLevel(), fallAt(409), 100);
    expect(Math.abs(end.minute - 400)).toBeLessThan(4);
    expect(end.cause).toBe("switched-off");
  });

  it("tells a probe in air by its speed", () => {
    const points = pointsOf(
      coolingFrom(() => 41, 590, 3),
      { until: 600 },
    );
    const end = findHoldEnd(points, flatLevel(), fallAt(591), 100);
    expect(Math.abs(end.minute - 590)).toBeLessThanOrEqual(1);
    expect(end.cause).toBe("probe-out");
  });

  it("never lies before what it is told", () => {
    const points = pointsOf(
      coolingFrom(() => 41, 400, 400),
      { until: 600 },
    );
    expect(findHoldEnd(points, flatLevel(), fallAt(409), 405).minute).toBeGreaterThanOrEqual(405);
  });
});
