import { describe, expect, it } from "vitest";
import { createRandom } from "./random.ts";
import { createRoom } from "./room.ts";

const course = (seed: number, setbackChance: number) =>
  createRoom(createRandom(seed, "room"), {
    fromSeconds: -30 * 3600,
    toSeconds: 90 * 3600,
    hourAtZero: 20,
    setbackChance,
  });

/** Mean over many rooms of the fall below the base at an hour of the day. */
function meanFall(hour: number, setbackChance: number): number {
  const falls = Array.from({ length: 400 }, (_, seed) => {
    const room = course(seed, setbackChance);
    return room.base - room.at(((hour - 20 + 24) % 24) * 3600);
  });
  return falls.reduce((sum, fall) => sum + fall, 0) / falls.length;
}

describe("createRoom", () => {
  it("is coldest towards morning and warmest in the afternoon", () => {
    // Mean night fall 2.25 degC. At 05:30 within 1.5 h of the lowest hour, at 17:30 of the highest:
    // the wave gives away at most (1 - cos(pi / 8)) / 2 = 4 %. Mean of 400: standard error 0.06.
    expect(meanFall(5.5, 0)).toBeGreaterThan(1.95);
    expect(meanFall(5.5, 0)).toBeLessThan(2.5);
    expect(Math.abs(meanFall(17.5, 0))).toBeLessThan(0.35);
  });

  it("falls further where heating is set back at night", () => {
    // Setback 0.8..3 degC, mean 1.9, nearly reached by 05:30.
    const further = meanFall(5.4, 1) - meanFall(5.4, 0);
    expect(further).toBeGreaterThan(1.5);
    expect(further).toBeLessThan(2.2);
  });

  it("keeps to living rooms", () => {
    for (let seed = 0; seed < 200; seed += 1) {
      const room = course(seed, 0.5);
      for (let hour = -30; hour <= 90; hour += 1) {
        expect(room.at(hour * 3600)).toBeGreaterThan(7);
        expect(room.at(hour * 3600)).toBeLessThan(28);
      }
    }
  });

  it("is continuous", () => {
    const room = course(5, 1);
    for (let second = 0; second < 86_400; second += 10)
      expect(Math.abs(room.at(second + 10) - room.at(second))).toBeLessThan(0.1);
  });
});
