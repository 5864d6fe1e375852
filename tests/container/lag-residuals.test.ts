import { describe, expect, it } from "vitest";
import { followBath } from "../../src/container/follow-bath.ts";
import { lagResiduals, sumOfSquares } from "../../src/container/lag-residuals.ts";
import { course, warmingBath, warmingFood } from "./courses.ts";

const largest = (values: Float64Array) => values.reduce((a, b) => Math.max(a, Math.abs(b)), 0);

describe("lagResiduals", () => {
  const bath = course(0.05, 400, warmingBath);
  const food = course(0.7, 400, warmingFood(25));

  it("are nothing at the true lag (closed form) and something at others", () => {
    // Straight pieces of 0.05 min miss the bath by 21 (0.05 / 40)^2 / 8 = 4e-6 degC.
    expect(largest(lagResiduals({ bath, food, room: null }, 25))).toBeLessThan(1e-5);
    expect(largest(lagResiduals({ bath, food, room: null }, 20))).toBeGreaterThan(0.05);
  });

  it("do not mind a difference between the thermometers, a cold start, or a share lost", () => {
    const changed = {
      minutes: food.minutes,
      celsius: food.celsius.map(
        (value, i) => 0.93 * value + 0.07 * 21 + 0.8 - 6 * Math.exp(-food.minutes[i]! / 25),
      ),
    };
    expect(largest(lagResiduals({ bath, food: changed, room: null }, 25))).toBeLessThan(1e-5);
  });

  it("follow a measured room as well", () => {
    // F = G - phi (G - R): linear, so the room's part is the room as followed with the same lag.
    const room = course(10, 400, (minute) => 22 - 3 * Math.sin(minute / 60));
    const share = 0.1;
    const followedRoom = followBath(room, 25, food.minutes);
    const celsius = food.celsius.map((value, i) => (1 - share) * value + share * followedRoom[i]!);
    const lossy = { minutes: food.minutes, celsius };
    expect(largest(lagResiduals({ bath, food: lossy, room }, 25))).toBeLessThan(1e-5);
    expect(largest(lagResiduals({ bath, food: lossy, room: null }, 25))).toBeGreaterThan(0.01);
  });
});

describe("sumOfSquares", () => {
  it("adds squares", () => {
    expect(sumOfSquares(Float64Array.of(3, -4))).toBe(25);
  });
});
