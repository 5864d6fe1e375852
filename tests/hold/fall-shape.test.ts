import { describe, expect, it } from "vitest";
import {
  goesOnFalling,
  hasFallen,
  isRecovering,
  isSteep,
  offsetAt,
} from "../../src/hold/fall-shape.ts";
import { coolingFrom, interrupted, pointsOf } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const level = flatLevel(0.1);
const run = { first: 200, last: 240, below: 1, above: 0 };

describe("hasFallen", () => {
  it("tells a dip from the tail of an approach and from a controller's undershoot", () => {
    const dip = pointsOf((m) => (m >= 200 && m <= 240 ? 40 : 41), { until: 400 });
    const tail = pointsOf((m) => Math.min(41, 30 + m / 22), { until: 400 });
    const ringing = pointsOf((m) => (m > 150 && m < 190 ? 43 : m >= 200 && m <= 240 ? 40 : 41), {
      until: 400,
    });
    expect(hasFallen(dip, level, run, 0.3)).toBe(true);
    expect(hasFallen(tail, level, run, 0.3)).toBe(false);
    expect(hasFallen(ringing, level, run, 0.3)).toBe(false);
  });
});

describe("isSteep", () => {
  it("asks for a fall of so many degC per hour", () => {
    const slow = pointsOf((m) => 41 - Math.max(0, m - 200) * (0.5 / 60), {
      until: 400,
      resolution: 1e-6,
    });
    expect(isSteep(slow, flatLevel(), 201, 0.45)).toBe(true);
    expect(isSteep(slow, flatLevel(), 201, 0.55)).toBe(false);
  });
});

const falling = (perHour: number) =>
  pointsOf((m) => 41 - Math.max(0, m - 200) * (perHour / 60), { until: 400, resolution: 1e-6 });

describe("goesOnFalling", () => {
  it("asks a fall of two hours for half a degree per hour", () => {
    expect(goesOnFalling(falling(0.6), 201, 400)).toBe(true);
    expect(goesOnFalling(falling(0.4), 201, 400)).toBe(false);
  });

  it("leaves a shorter fall alone", () => {
    expect(goesOnFalling(falling(0.4), 201, 300)).toBe(true);
  });
});

describe("isRecovering", () => {
  it("sees the climb off the lowest", () => {
    const back = pointsOf(
      interrupted(() => 41, 200, 30, 200, 20),
      { until: 400 },
    );
    const gone = pointsOf(
      coolingFrom(() => 41, 200, 200),
      { until: 400 },
    );
    const event = { first: 200, last: 260, below: 3, above: 0 };
    expect(isRecovering(back, level, event)).toBe(true);
    expect(isRecovering(gone, level, event)).toBe(false);
  });
});

describe("offsetAt", () => {
  it("is the reading less the level", () => {
    expect(
      offsetAt(
        pointsOf(() => 40, { until: 5 }),
        level,
        3,
      ),
    ).toBeCloseTo(-1, 9);
  });
});
