import { describe, expect, it } from "vitest";
import { fitLag } from "../../src/container/fit-lag.ts";
import { createRandom } from "../simulator/random.ts";
import { course, warmingBath, warmingFood } from "./courses.ts";

const doubts = { resolution: 0.1, unseenRoom: 0.05 };
const rounded = (value: number) => Math.round(value * 10) / 10;

const warmUpFit = (step: number, length: number, lag: number) =>
  fitLag(
    {
      bath: course(step, length, warmingBath),
      food: course(step, length, warmingFood(lag)),
      room: null,
    },
    doubts,
  );

describe("fitLag", () => {
  it.each([5 / 60, 1, 10])("finds the lag of a warm-up read every %d min", (step) => {
    // Closed form (see courses.ts), lag 25 min, read to 0.1 degC.
    const bath = course(step, 600, (minute) => rounded(warmingBath(minute)));
    const food = course(step, 600, (minute) => rounded(warmingFood(25)(minute)));
    const { value, standardUncertainty } = fitLag({ bath, food, room: null }, doubts)!;
    expect(Math.abs(value - 25)).toBeLessThan(3 * standardUncertainty);
    expect(standardUncertainty).toBeLessThan(3);
  });

  it("finds it from a swing alone", () => {
    // Sine of 40 min through a lag of 15 min, closed form as in follow-bath.test.ts.
    const w = (2 * Math.PI) / 40;
    const bath = course(1, 600, (minute) => rounded(40 + Math.sin(w * minute)));
    const food = course(1, 600, (minute) =>
      rounded(39.6 + Math.sin(w * minute - Math.atan(15 * w)) / Math.hypot(1, 15 * w)),
    );
    const { value, standardUncertainty } = fitLag({ bath, food, room: null }, doubts)!;
    expect(Math.abs(value - 15)).toBeLessThan(3 * standardUncertainty);
    expect(standardUncertainty).toBeLessThan(2);
  });

  it("says nothing of a flat bath, whatever the noise", () => {
    const random = createRandom(3, "flat bath");
    for (let night = 0; night < 20; night += 1) {
      const level = (celsius: number) =>
        course(2, 480, () => rounded(celsius + random.normal(0, 0.08)));
      expect(fitLag({ bath: level(41), food: level(40.5), room: null }, doubts)).toBeNull();
    }
  });

  it("says nothing of a lag below the interval between readings, nor of few readings", () => {
    expect(warmUpFit(10, 600, 6)).toBeNull();
    expect(warmUpFit(1, 600, 6)).not.toBeNull();
    expect(warmUpFit(10, 100, 25)).toBeNull();
  });
});
