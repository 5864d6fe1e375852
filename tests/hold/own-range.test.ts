import { describe, expect, it } from "vitest";
import { firstEntry, ownRange, ownRangeStart } from "../../src/hold/own-range.ts";
import { approachNight, pointsOf } from "./constructed.ts";

// A constructed warmer of three hours' time constant, 41 - 21 e^(-t/180), logged for 12 h.
const slow = pointsOf(approachNight(180), { until: 720, resolution: 0.001 });
const calm = new Uint8Array(721);
const later = ownRange(slow, 0, 720, calm)!;

describe("ownRange", () => {
  it("is the central 95 % of the second half", () => {
    // Its lowest 2.5 % end at minute 369, its highest begin at 711.
    const at = approachNight(180);
    expect(Math.abs(later.level.intercept + later.level.low - at(369))).toBeLessThan(0.05);
    expect(Math.abs(later.level.intercept + later.level.high - at(711))).toBeLessThan(0.05);
    expect(later.from).toBe(360);
  });

  it("leaves disturbed points out and needs three", () => {
    expect(ownRange(slow, 0, 720, new Uint8Array(721).fill(1, 363))!.level.high).toBeLessThan(0.1);
    expect(ownRange(slow, 0, 720, new Uint8Array(721).fill(1, 361))).toBeNull();
  });
});

describe("ownRangeStart", () => {
  it("is half a degree before the range, disturbances aside", () => {
    // 41 - 21 e^(-369/180) = 38.30; 37.80 is reached at 180 ln(21 / 3.20) = 338.6 min.
    expect(Math.abs(ownRangeStart(slow, later, 720)! - 338.6)).toBeLessThan(3);
    const celsius = slow.celsius.map((value, index) => (index > 500 && index < 520 ? 25 : value));
    const disturbed = calm.slice().fill(1, 490, 530);
    const dipped = ownRangeStart({ ...slow, celsius }, { ...later, disturbed }, 720)!;
    expect(Math.abs(dipped - 338.6)).toBeLessThan(3);
  });

  it("is null where the last reading is outside", () => {
    const celsius = slow.celsius.map((value, index) => (index > 700 ? 20 : value));
    expect(ownRangeStart({ ...slow, celsius }, later, 720)).toBeNull();
  });
});

describe("firstEntry", () => {
  it("is the first minute within half a degree of the range", () => {
    expect(Math.abs(firstEntry(slow, later.level) - 339)).toBeLessThan(2);
  });
});
