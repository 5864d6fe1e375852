import { describe, expect, it } from "vitest";
import { followBath } from "../../src/container/follow-bath.ts";
import { course } from "./courses.ts";

describe("followBath", () => {
  it("answers a step by 1 - exp(-t / tau)", () => {
    // tau dG/dt = 41 - G, G(0) = 22: G = 41 - 19 exp(-t / 45); values of the closed form. The
    // step is taken over 1e-9 min, far below the tolerance.
    const bath = {
      minutes: Float64Array.of(0, 1e-9, 500),
      celsius: Float64Array.of(22, 41, 41),
    };
    const at = Float64Array.of(15, 30, 45, 60, 90, 120, 180);
    const expected = [27.38591, 31.24507, 34.01029, 35.99165, 38.42863, 39.67981, 40.652];
    followBath(bath, 45, at).forEach((value, i) => expect(value).toBeCloseTo(expected[i]!, 5));
  });

  it("trails a ramp by G = 22 + r (t - tau + tau exp(-t / tau)), exact at any step", () => {
    // Solves tau dG/dt = 22 + r t - G, G(0) = 22, with r = 0.2 degC/min, tau = 15 min.
    const bath = course(100, 100, (minute) => 22 + 0.2 * minute);
    const values = followBath(bath, 15, Float64Array.of(15, 30, 60));
    [23.103638, 25.406006, 31.054947].forEach((value, i) =>
      expect(values[i]).toBeCloseTo(value, 6),
    );
  });

  it("follows a sine late and attenuated", () => {
    // Steady solution of tau dG/dt = sin(w t) - G: k sin(w t - atan(w tau)), k = 1 / sqrt(1 + (w tau)^2).
    // Straight pieces of 0.05 min differ from a sine of 30 min by (w h)^2 / 8 = 1.4e-5 at most.
    const [lag, period] = [12, 30];
    const w = (2 * Math.PI) / period;
    const bath = course(0.05, 600, (minute) => Math.sin(w * minute));
    const at = Float64Array.of(400, 407.3, 415, 599);
    followBath(bath, lag, at).forEach((value, i) => {
      const closed = Math.sin(w * at[i]! - Math.atan(w * lag)) / Math.hypot(1, w * lag);
      expect(Math.abs(value - closed)).toBeLessThan(2e-5);
    });
  });

  it("does not mind how unevenly a straight bath was read", () => {
    const even = course(1, 60, (minute) => 20 + 0.5 * minute);
    const uneven = {
      minutes: Float64Array.of(0, 0.1, 7, 7.5, 44, 60),
      celsius: Float64Array.of(20, 20.05, 23.5, 23.75, 42, 50),
    };
    const at = Float64Array.of(0.05, 3, 20, 59.9);
    const [a, b] = [followBath(even, 8, at), followBath(uneven, 8, at)];
    a.forEach((value, i) => expect(value).toBeCloseTo(b[i]!, 10));
  });

  it("is the bath itself without a lag, level beyond its ends", () => {
    const bath = { minutes: Float64Array.of(10, 20), celsius: Float64Array.of(30, 40) };
    expect([...followBath(bath, 0, Float64Array.of(5, 10, 15, 20, 25))]).toEqual([
      30, 30, 35, 40, 40,
    ]);
  });
});
