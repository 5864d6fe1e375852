import { describe, expect, it } from "vitest";
import { lagSensitivity, lagShift } from "../../src/container/lag-sensitivity.ts";
import { searchLag } from "../../src/container/lag-search.ts";
import { course, warmingBath, warmingFood } from "./courses.ts";

const bath = course(0.1, 400, warmingBath);
const food = course(1, 400, warmingFood(25));

describe("lagShift", () => {
  it("says how far the search moves when the readings are off", () => {
    // Constructed: an error of 0.02 degC that comes and goes; first order, so to a few percent.
    const error = food.minutes.map((minute) => 0.02 * Math.sin(minute / 9));
    const off = { minutes: food.minutes, celsius: food.celsius.map((v, i) => v + error[i]!) };
    const moved = searchLag({ bath, food: off, room: null })!.lag - 25;
    const shift = lagShift(lagSensitivity({ bath, food, room: null }, 25), error);
    expect(Math.abs(moved)).toBeGreaterThan(0.01);
    expect(shift / moved).toBeCloseTo(1, 1);
  });

  it("is blind to what the fit takes up by itself: a difference between the thermometers", () => {
    const constant = food.minutes.map(() => 1);
    const shift = lagShift(lagSensitivity({ bath, food, room: null }, 25), constant);
    expect(Math.abs(shift)).toBeLessThan(1e-6);
  });
});
