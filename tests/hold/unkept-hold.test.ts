import { describe, expect, it } from "vitest";
import { findUnkeptHold } from "../../src/hold/unkept-hold.ts";
import { approachNight, coolingFrom, interrupted, pointsOf } from "./constructed.ts";
import type { Course } from "./constructed.ts";

const found = (course: Course) =>
  findUnkeptHold(pointsOf(course, { until: 720, noise: 0.03, resolution: 0.01 }), null, 28, 20);
const slow = approachNight(180);

// Constructed: 41 - 21 e^(-t/180); the later range begins at minute 369, half a degree before it is 338.6.
describe("findUnkeptHold", () => {
  it("begins where the readings come near their own later range", () => {
    expect(Math.abs(found(slow)!.from - 338.6)).toBeLessThan(6);
    expect(found(slow)!.to).toBe(720);
  });

  it("counts from the beginning of the rise", () => {
    // The same an hour later: half of 60..720 is 390, its lowest 2.5 % end at 398, on the curve 338.
    const late = found(approachNight(180, 60))!;
    const low = 41 - 21 * Math.exp(-338 / 180) - 0.5;
    expect(Math.abs(late.from - (60 + 180 * Math.log(21 / (41 - low))))).toBeLessThan(12);
  });

  it("leaves a power cut out and ends with a clear fall", () => {
    const cut = found(interrupted(slow, 600, 20, 60, 10))!;
    expect(cut.disturbances).toHaveLength(1);
    expect(Math.abs(cut.from - 338.6)).toBeLessThan(25);
    expect(Math.abs(found(coolingFrom(slow, 690, 20))!.to - 690)).toBeLessThan(10);
  });

  it("is null under the floor", () => {
    expect(found((m) => 20 + 25 * Math.exp(-m / 200))).toBeNull();
  });
});
