import { describe, expect, it } from "vitest";
import { followBath } from "../../src/container/follow-bath.ts";
import { searchLag } from "../../src/container/lag-search.ts";
import { lagUncertainty } from "../../src/container/lag-uncertainty.ts";
import { course, warmingBath, warmingFood } from "./courses.ts";

// Constructed: no noise at all, so that only the part asked for is left beside the probes' 0.1 min.
const bath = course(0.5, 400, warmingBath);
const food = course(1, 400, warmingFood(25));
const sawTooth = (minute: number) => 40 + Math.abs(((minute / 21) % 1) - 0.5) * 4;
const clean = { resolution: 0, unseenRoom: 0 };

const withStep = (resolution: number) =>
  lagUncertainty({ bath, food, room: null }, 25, { ...clean, resolution });

describe("lagUncertainty", () => {
  it("never falls below what two probes' own lags may differ", () => {
    expect(lagUncertainty({ bath, food, room: null }, 25, clean)).toBeCloseTo(0.1, 3);
  });

  it("grows with the display's step", () => {
    expect(withStep(0.5)).toBeGreaterThan(2 * withStep(0.1));
  });

  it("grows with what a room nobody saw may do", () => {
    const slow = course(1, 1500, (minute) => 30 + 2 * Math.sin(minute / 200));
    const u = lagUncertainty({ bath: slow, food: slow, room: null }, 25, {
      resolution: 0,
      unseenRoom: 0.1,
    });
    // A bath that moves no faster than the room: a tenth of a degree hides minutes of lag.
    expect(u).toBeGreaterThan(3);
  });

  it("grows where a bath with kinks was read rarely, and covers what that does", () => {
    // Saw-tooth of a thermostat, 21 min, read every 4 min; the food follows the true course.
    const fine = course(0.1, 600, sawTooth);
    const at = Float64Array.from({ length: 600 }, (_, minute) => minute);
    const followed = { minutes: at, celsius: followBath(fine, 12, at) };
    const seldom = { bath: course(4, 600, sawTooth), food: followed, room: null };
    const few = lagUncertainty(seldom, 12, clean);
    expect(few).toBeGreaterThan(1.5 * lagUncertainty({ ...seldom, bath: fine }, 12, clean));
    expect(Math.abs(searchLag(seldom)!.lag - 12)).toBeLessThan(2 * few);
  });
});
