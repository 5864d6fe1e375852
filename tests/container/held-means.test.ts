import { describe, expect, it } from "vitest";
import { heldMeans } from "../../src/container/held-means.ts";
import { createRandom } from "../simulator/random.ts";
import { course } from "./courses.ts";

const swing = (minute: number) => Math.sin((2 * Math.PI * minute) / 40);

describe("heldMeans", () => {
  it("weights by time, not by readings", () => {
    // Bath 1 degC above the food for 8 of 10 h, 3 degC for the rest, read three times as often then.
    const minutes = Float64Array.from([
      ...Array.from({ length: 48 }, (_, i) => i * 10),
      ...Array.from({ length: 41 }, (_, i) => 480 + i * 3),
    ]);
    const bath = { minutes, celsius: minutes.map((minute) => (minute < 480 ? 41 : 43)) };
    const means = heldMeans(bath, { minutes, celsius: minutes.map(() => 40) }, null);
    // (8 x 1 + 2 x 3) / 10; the border lies half-way between two readings, hence 0.03;
    // counting readings would give 1.9.
    expect(Math.abs(means.bath - means.food - 1.4)).toBeLessThan(0.03);
  });

  it("does not take a thermostat's swing for doubt once the lag is known", () => {
    const random = createRandom(1, "held means");
    const bath = course(1, 600, (minute) => 41 + swing(minute) + random.normal(0, 0.02));
    // Closed form of the follower, tau = 15: attenuated by k, late by atan(w tau).
    const w = (2 * Math.PI) / 40;
    const food = course(
      1,
      600,
      (minute) =>
        40.5 +
        Math.sin(w * minute - Math.atan(15 * w)) / Math.hypot(1, 15 * w) +
        random.normal(0, 0.02),
    );
    const held = { minutes: food.minutes.slice(100), celsius: food.celsius.slice(100) };
    const [known, unknown] = [heldMeans(bath, held, 15), heldMeans(bath, held, null)];
    expect(known.scatter).toBeLessThan(0.006);
    expect(unknown.scatter).toBeGreaterThan(3 * known.scatter);
    expect(known.followed - known.food).toBeCloseTo(0.5, 1);
  });
});
