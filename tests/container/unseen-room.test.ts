import { describe, expect, it } from "vitest";
import { unseenRoom } from "../../src/container/unseen-room.ts";
import { course, seriesOf } from "./courses.ts";

const means = { bath: 41, food: 39, followed: 41, scatter: 0 };

describe("unseenRoom", () => {
  it("is the share lost times how far a stated room may move", () => {
    // Constructed: 2 of 20 degC lost, room 18 to 24: 0.1 x 6 / sqrt(12).
    expect(unseenRoom({ low: 18, high: 24 }, means, 0)).toBeCloseTo(0.6 / Math.sqrt(12), 12);
  });

  it("assumes 21 +- 1 degC (standard deviation) where nobody said", () => {
    expect(unseenRoom(null, means, 0)).toBeCloseTo(0.1, 12);
  });

  it("is nothing where a probe saw the room", () => {
    expect(
      unseenRoom(
        seriesOf(
          "room",
          course(1, 9, () => 20),
        ),
        means,
        0,
      ),
    ).toBe(0);
  });

  it("never says that the food follows the room more than the room itself", () => {
    expect(unseenRoom({ low: 39, high: 41 }, { ...means, food: 30 }, 0)).toBeCloseTo(
      2 / Math.sqrt(12),
    );
  });
});
