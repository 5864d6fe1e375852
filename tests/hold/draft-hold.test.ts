import { describe, expect, it } from "vitest";
import { isHold, isLong, isRamp } from "../../src/hold/draft-hold.ts";
import { approachNight, pointsOf, sawtooth } from "./constructed.ts";
import { flatLevel } from "./flat-level.ts";

const draft = (from: number, to: number, slope = 0) => ({
  from,
  to,
  level: { ...flatLevel(0.1), slope },
  fall: null,
  disturbances: [],
});
const flat = pointsOf(() => 41, { until: 600, noise: 0.05 });

describe("isHold", () => {
  it("asks for half an hour, three readings and a level that stands nearly still", () => {
    expect(isHold(flat, draft(0, 600))).toBe(true);
    expect(isHold(flat, draft(0, 29))).toBe(false);
    expect(isHold(flat, draft(0, 600, 0.6 / 60))).toBe(false);
    expect(
      isLong(
        pointsOf(() => 41, { until: 100, step: 60 }),
        { from: 0, to: 60 },
      ),
    ).toBe(false);
  });
});

describe("isRamp", () => {
  it("sees a steady rise, not a swing or the tail of an approach", () => {
    const stretch = { from: 0, to: 600 };
    expect(
      isRamp(
        pointsOf((m) => 20 + m / 40, { until: 600 }),
        stretch,
      ),
    ).toBe(true);
    expect(
      isRamp(
        pointsOf((m) => 41 + sawtooth(70, 3)(m), { until: 600 }),
        stretch,
      ),
    ).toBe(false);
    expect(isRamp(pointsOf(approachNight(45), { until: 600 }), { from: 170, to: 600 })).toBe(false);
  });
});
