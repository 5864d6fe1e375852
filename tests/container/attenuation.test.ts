import { describe, expect, it } from "vitest";
import { attenuation } from "../../src/container/attenuation.ts";
import { followBath } from "../../src/container/follow-bath.ts";
import { course } from "./courses.ts";

describe("attenuation", () => {
  it("is 1 / sqrt(1 + (2 pi tau / P)^2)", () => {
    // At P = 2 pi tau the ratio is 1 / sqrt 2, the half-power point of every first-order lag;
    // its slope there is -1 / (2 sqrt 2 tau).
    const lag = { value: 10, standardUncertainty: 0.4 };
    const { value, standardUncertainty } = attenuation(lag, 20 * Math.PI);
    expect(value).toBeCloseTo(Math.SQRT1_2, 12);
    expect(standardUncertainty).toBeCloseTo(0.4 / (20 * Math.SQRT2), 12);
  });

  it("is what a follower does to a swing", () => {
    const bath = course(0.1, 900, (minute) => Math.sin((2 * Math.PI * minute) / 45));
    const at = Float64Array.from({ length: 4500 }, (_, i) => 450 + i * 0.1);
    const highest = followBath(bath, 20, at).reduce((a, b) => Math.max(a, b));
    expect(attenuation({ value: 20, standardUncertainty: 0 }, 45).value).toBeCloseTo(highest, 3);
  });

  it("lets everything through without a lag", () => {
    expect(attenuation({ value: 0, standardUncertainty: 0 }, 30)).toEqual({
      value: 1,
      standardUncertainty: 0,
    });
  });
});
