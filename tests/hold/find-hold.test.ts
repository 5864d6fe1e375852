import { describe, expect, it } from "vitest";
import { findHold } from "../../src/hold/find-hold.ts";
import { coolingFrom, interrupted, pointsOf, rampHoldReached, rampNight } from "./constructed.ts";

const noisy = { until: 720, noise: 0.05, resolution: 0.1 };

describe("findHold", () => {
  it("settles on borders and disturbances together", () => {
    const course = coolingFrom(interrupted(rampNight, 300, 40, 200, 15), 600, 300);
    const hold = findHold(pointsOf(course, noisy), 28, 20)!;
    expect(Math.abs(hold.from - rampHoldReached)).toBeLessThan(5);
    expect(Math.abs(hold.to - 600)).toBeLessThan(6);
    expect(hold.end!.cause).toBe("switched-off");
    expect(hold.disturbances).toHaveLength(1);
  });

  it("is null where the level never stands still for half an hour", () => {
    expect(
      findHold(
        pointsOf((m) => 20 + m / 40, noisy),
        28,
        20,
      ),
    ).toBeNull();
    expect(
      findHold(
        pointsOf(() => 20, noisy),
        28,
        20,
      ),
    ).toBeNull();
  });
});
