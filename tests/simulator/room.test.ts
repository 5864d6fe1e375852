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

describe("a heating in steps", () => {
  const plan = {
    fromSeconds: 0,
    toSeconds: 3 * 86_400,
    hourAtZero: 0,
    setbackChance: 0,
  };
  const stepped = (seed: number) =>
    createRoom(createRandom(seed, "room"), { ...plan, steps: createRandom(seed, "steps") });
  const plain = (seed: number) => createRoom(createRandom(seed, "room"), plan);

  it("lowers the room by night, warms it beyond in the morning, and leaves the day as it is", () => {
    for (let seed = 1; seed <= 30; seed += 1) {
      const [one, other] = [stepped(seed), plain(seed)];
      const apart = (hour: number): number => one.at(hour * 3600) - other.at(hour * 3600);
      // Setback 1 to 4 degC between 23:48 and 5:00 at the latest; a lag of 40 min leaves e^-6 of it at 4:00.
      expect(apart(28)).toBeLessThan(-0.95);
      expect(apart(28)).toBeGreaterThan(-4.05);
      const morning = Array.from({ length: 40 }, (_, at) => apart(29 + at / 6));
      expect(Math.max(...morning)).toBeGreaterThan(0.1);
      // Boost ends by 10:30 at the latest; ten lags later next to nothing of 2 degC is left.
      expect(Math.abs(apart(42))).toBeLessThan(0.01);
    }
  });
});

it("has the same home but other air on another night", () => {
  const plan = { fromSeconds: 0, toSeconds: 86_400, hourAtZero: 20, setbackChance: 0 };
  const first = createRoom(createRandom(5, "room"), plan);
  const otherNight = createRandom(6, "weather");
  const second = createRoom(createRandom(5, "room"), { ...plan, otherNight });
  expect(second.home).toBe(first.home);
  expect(second.base).not.toBe(first.base);
});
