import { describe, expect, it } from "vitest";
import { expectedAt, levelAt, steepestSlope } from "../../src/hold/level.ts";
import { flatLevel } from "./flat-level.ts";

const approach = {
  from: 30,
  timeConstant: 60,
  amplitude: 10,
  intercept: 41,
  slope: -0.01,
  bend: 0.0001,
  earlyResidual: 0,
  lateResidual: 0,
};

describe("a straight level", () => {
  it("is expected as it is", () => {
    const level = { ...flatLevel(), slope: -0.002 };
    expect(levelAt(level, 100)).toBeCloseTo(40.8, 12);
    expect(expectedAt(level, 100)).toBeCloseTo(40.8, 12);
    expect(steepestSlope(level, 0, 100)).toBe(0.002);
  });
});

describe("a level being approached", () => {
  it("moves along its curve, less what is missing", () => {
    const level = { ...flatLevel(), approach };
    // x = 60: 41 - 0.6 + 0.36 = 40.76, with 10/e missing.
    expect(levelAt(level, 90)).toBeCloseTo(40.76, 12);
    expect(expectedAt(level, 90)).toBeCloseTo(40.76 - 10 / Math.E, 12);
    // -0.01 + 0.0002 x at x = 0 and 120.
    expect(steepestSlope(level, 30, 150)).toBeCloseTo(0.014, 12);
  });
});
