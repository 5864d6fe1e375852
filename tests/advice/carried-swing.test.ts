import { describe, expect, it } from "vitest";
import { carriedSwing, sameSwing, withSwing } from "../../src/advice/carried-swing.ts";
import { attenuation } from "../../src/container/attenuation.ts";
import { followBath } from "../../src/container/follow-bath.ts";
import type { FastResidual } from "../../src/culture/fast-residual.ts";
import type { Swing } from "../../src/hold/hold.ts";
import { course } from "../container/courses.ts";

const swing = (periodMinutes: number, peakToPeak: number): Swing => ({
  periodMinutes,
  peakToPeak,
  cycles: 20,
});
const lag = (value: number, standardUncertainty = 0) => ({ value, standardUncertainty });

describe("carriedSwing", () => {
  it("is what a follower makes of a bath's swing, and another follower of the same bath", () => {
    // Two lumped bodies in one sinusoidal bath, by the solver of the lag's own equation.
    const bath = course(0.1, 1500, (minute) => Math.sin((2 * Math.PI * minute) / 45));
    const at = Float64Array.from({ length: 4500 }, (_, i) => 900 + i * 0.1);
    const amplitude = (minutes: number): number =>
      followBath(bath, minutes, at).reduce((a, b) => Math.max(a, b));
    const fromBath = carriedSwing(swing(45, 2), null, lag(20), true);
    expect(fromBath.factors).toHaveLength(1);
    expect(fromBath.factors[0]!.factor).toBeCloseTo(amplitude(20), 3);
    const between = carriedSwing(swing(45, 1), lag(8), lag(30), true);
    expect(between.factors[0]!.factor).toBeCloseTo(amplitude(30) / amplitude(8), 3);
  });

  it("carries the lags' doubt as factors of the same mean and standard deviation", () => {
    const [from, to] = [lag(10, 1), lag(25, 4)];
    const { factors } = carriedSwing(swing(40, 1), from, to, true);
    const mean = factors.reduce((sum, { factor, weight }) => sum + weight * factor, 0);
    const variance = factors.reduce(
      (sum, { factor, weight }) => sum + weight * (factor - mean) ** 2,
      0,
    );
    const [before, after] = [attenuation(from, 40), attenuation(to, 40)];
    // JCGM 100:2008, 5.1.6: relative variances of a quotient add.
    const relative = Math.hypot(
      before.standardUncertainty / before.value,
      after.standardUncertainty / after.value,
    );
    expect(mean).toBeCloseTo(after.value / before.value, 9);
    expect(Math.sqrt(variance) / mean).toBeCloseTo(relative, 6);
  });

  it("does not blow up a swing seen through a slow container without end", () => {
    const { factors } = carriedSwing(swing(10, 0.1), lag(100), lag(1), true);
    expect(Math.max(...factors.map(({ factor }) => factor))).toBeLessThanOrEqual(4);
  });

  it("reckons with a hidden swing only where a thermostat works behind a slower container", () => {
    expect(carriedSwing(null, lag(80), lag(2), true).added).toBeGreaterThan(0.2);
    expect(carriedSwing(null, lag(80), lag(2), false).added).toBe(0);
    expect(carriedSwing(null, lag(2), lag(80), true).added).toBe(0);
    expect(carriedSwing(null, null, lag(2), true)).toEqual(sameSwing);
  });
});

/** Even quantiles of a sine of that amplitude: sin(pi (p - 1/2)). */
const sine = (amplitude: number, count = 400): FastResidual => ({
  values: Float64Array.from(
    { length: count },
    (_, i) => amplitude * Math.sin(Math.PI * ((i + 0.5) / count - 0.5)),
  ),
  top: amplitude,
  degreesOfFreedom: Infinity,
});

describe("withSwing", () => {
  it("turns a pure sine into a sine of the factor's size", () => {
    const found = withSwing(sine(1), swing(30, 2), 0.4, 0);
    expect(found.top).toBeCloseTo(0.4, 2);
    found.values.forEach((value, i) => expect(value).toBeCloseTo(sine(0.4).values[i]!, 2));
  });

  it("leaves what is no swing as it is", () => {
    const found = withSwing(sine(1), swing(30, 1), 0, 0);
    // Half the amplitude is swing: a quarter of the variance goes, the rest stays.
    expect(found.top).toBeCloseTo(Math.sqrt(3 / 4), 2);
    expect(withSwing(sine(1), null, 0, 0)).toEqual(sine(1));
  });

  it("adds a hidden swing's amplitude", () => {
    const found = withSwing(sine(0), null, 1, 0.3);
    expect(found.top).toBeCloseTo(0.3, 12);
    expect(Math.max(...found.values)).toBeCloseTo(0.3, 3);
    expect(Math.min(...found.values)).toBeCloseTo(-0.3, 3);
  });
});
