import { describe, expect, it } from "vitest";
import { isMeasured, roomLevel } from "../../src/container/room-level.ts";
import { course, seriesOf } from "./courses.ts";

const hold = { fromMinute: 100, toMinute: 200 };
const probe = seriesOf(
  "room",
  course(10, 300, (minute) => 20 + minute / 100),
  0.1,
);

describe("roomLevel", () => {
  it("takes a probe's mean over the hold, its thermometer's doubt and its step", () => {
    const level = roomLevel(probe, hold, 0.2)!;
    expect(level.mean).toBeCloseTo(21.5, 10);
    expect(level.standardUncertainty).toBeCloseTo(Math.hypot(0.2, 0.1 / Math.sqrt(12)), 12);
    expect(level.from).toBe("measured");
    expect(isMeasured(probe)).toBe(true);
  });

  it("takes the middle of a stated range, rectangular", () => {
    // JCGM 100:2008, 4.3.7: half-width over the root of three.
    const level = roomLevel({ low: 18, high: 24 }, hold, 0.2)!;
    expect(level.mean).toBe(21);
    expect(level.standardUncertainty).toBeCloseTo(3 / Math.sqrt(3), 12);
    expect(level.from).toBe("stated");
  });

  it("is null where nothing is known of the room in the hold", () => {
    expect(roomLevel(null, hold, 0.2)).toBeNull();
    expect(roomLevel(probe, { fromMinute: 900, toMinute: 950 }, 0.2)).toBeNull();
  });
});
