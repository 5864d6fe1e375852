import { describe, expect, it } from "vitest";
import { findHeatingStart } from "../../src/hold/heating-start.ts";
import { stepResponse } from "./step-response.ts";
import { approachNight, pointsOf, rampNight } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const noisy = { until: 600, noise: 0.05, resolution: 0.1 };

const coolingFirst = (m: number): number =>
  m < 100 ? 30 - m / 20 : Math.min(41, 25 + (m - 100) / 5);

const slowJar = (m: number): number => 20 + (m < 60 ? 0 : 21 * stepResponse(m - 60, 60, 25));

describe("findHeatingStart", () => {
  it.each([
    ["a ramp after an hour", rampNight, 60],
    ["an approach after 90 min", approachNight(60, 90), 90],
  ])("finds %s", (_, course, onset) => {
    expect(
      Math.abs(findHeatingStart(pointsOf(course, noisy), flatLevel(), 112) - onset),
    ).toBeLessThan(5);
  });

  it("goes back to the switch-on of a slow jar, whose rise begins flat", () => {
    expect(
      Math.abs(findHeatingStart(pointsOf(slowJar, noisy), flatLevel(), 250) - 60),
    ).toBeLessThan(6);
  });

  it("is the log's start when the rise is under way", () => {
    expect(findHeatingStart(pointsOf(approachNight(60), noisy), flatLevel(), 200)).toBe(0);
  });

  it("lies after warm water cooled down before the switch-on", () => {
    expect(
      Math.abs(findHeatingStart(pointsOf(coolingFirst, noisy), flatLevel(), 180) - 100),
    ).toBeLessThan(8);
  });
});
