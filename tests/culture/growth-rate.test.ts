import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { GrowthLimits, SourcedTemperature } from "../../src/culture/culture.ts";
import { cardinalTemperatures, growthRate, relativeRate } from "../../src/culture/growth-rate.ts";
import type { CardinalTemperatures } from "../../src/culture/growth-rate.ts";
import * as organisms from "../../src/culture/organisms.ts";
import { celsius } from "../../src/quantity.ts";

const cardinal = (minimum: number, optimum: number, maximum: number): CardinalTemperatures => ({
  minimum,
  optimum,
  maximum,
});

const known = (value: number | null): SourcedTemperature | null =>
  value === null ? null : { celsius: celsius(value), source: { kind: "own" } };
const limits = (
  minimum: number | null,
  optimum: number | null,
  maximum: number | null,
): GrowthLimits => ({
  organism: "constructed",
  minimum: known(minimum),
  optimum: known(optimum),
  maximum: known(maximum),
});

const anyCardinal = fc
  .tuple(
    fc.double({ min: -5, max: 30, noNaN: true }),
    fc.double({ min: 5, max: 40, noNaN: true }),
    // The optimum's place in the upper half, kept off both borders.
    fc.double({ min: 0.51, max: 0.99, noNaN: true }),
  )
  .map(([minimum, span, place]) => cardinal(minimum, minimum + span * place, minimum + span));

describe("relativeRate", () => {
  // Temperatures and rate at the optimum: Medvedova et al. 2019, Fermentation 5(1):2, mixed milk
  // culture. Rates recomputed in Python from the formula of Rosso et al. 1993; printed to 1e-6.
  // prettier-ignore
  it.each([
    [10, 0.090215], [20, 0.572772], [30, 1.243255], [37, 1.549314], [38.3, 1.56], [42, 1.449687],
    [43, 1.372718], [45, 1.137409], [48, 0.513981], [4, 0], [49.6, 0],
  ])("of Medvedova's mixed milk culture at %f degC is %f per hour", (at, rate) => {
    const found = 1.56 * relativeRate(cardinal(4, 38.3, 49.6), at);
    expect(Math.abs(found - rate)).toBeLessThanOrEqual(5.1e-7);
  });

  // Limits of table 26.1 of Food Biochemistry and Food Processing (Hui, ed.): S. thermophilus,
  // L. bulgaricus, L. acidophilus; rates recomputed in Python as above.
  // prettier-ignore
  it.each([
    [20, 40, 50, [[25, 0.15625], [30, 0.5], [35, 0.84375], [38, 0.972], [41, 0.99225], [43, 0.92575],
      [45, 0.78125], [48, 0.392]]],
    [22, 42.5, 52, [[25, 0.053636], [30, 0.3217], [38, 0.867639], [41, 0.983286], [43, 0.997988],
      [45, 0.945729], [48, 0.707252]]],
    [20, 37, 45, [[25, 0.198728], [30, 0.61703], [35, 0.959079], [38, 0.988235], [40, 0.884564],
      [41, 0.786096], [43, 0.478733], [45, 0]]],
  ] as const)("with limits %f, %f, %f", (minimum, optimum, maximum, rates) => {
    for (const [at, rate] of rates) {
      const found = relativeRate(cardinal(minimum, optimum, maximum), at);
      expect(Math.abs(found - rate), `${at} degC`).toBeLessThanOrEqual(5.1e-7);
    }
  });

  it("is 1 at the optimum, 0 at the ends and outside, and between them between", () => {
    const place = fc.double({ min: -0.5, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(anyCardinal, place, (one, where) => {
        const at = one.minimum + where * (one.maximum - one.minimum);
        const found = relativeRate(one, at);
        expect(found).toBeGreaterThanOrEqual(0);
        expect(found).toBeLessThanOrEqual(1);
        if (at <= one.minimum || at >= one.maximum) expect(found).toBe(0);
        // Rounding of a quotient whose terms cancel least at the optimum: a few units of 1e-16.
        expect(relativeRate(one, one.optimum)).toBeCloseTo(1, 12);
        expect(relativeRate(one, one.minimum)).toBe(0);
        expect(relativeRate(one, one.maximum)).toBe(0);
      }),
    );
  });

  it("rises up to the optimum and falls from there on", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyCardinal, share, share, (one, first, second) => {
        const [nearer, farther] = [Math.min(first, second), Math.max(first, second)];
        const below = (way: number) => one.optimum - way * (one.optimum - one.minimum);
        const above = (way: number) => one.optimum + way * (one.maximum - one.optimum);
        for (const at of [below, above]) {
          const drop = relativeRate(one, at(nearer)) - relativeRate(one, at(farther));
          expect(drop).toBeGreaterThanOrEqual(-1e-12);
        }
      }),
    );
  });

  it("passes an unknown temperature on", () => {
    expect(relativeRate(cardinal(20, 40, 50), NaN)).toBeNaN();
  });
});

describe("cardinalTemperatures", () => {
  it("are none where a limit was not found", () => {
    expect(cardinalTemperatures(limits(null, 36, 45))).toBeNull();
    expect(cardinalTemperatures(limits(15, null, 45))).toBeNull();
    expect(cardinalTemperatures(limits(15, 36, null))).toBeNull();
  });

  it("are none where the model has no inflection: optimum at or below the middle, or at the maximum", () => {
    expect(cardinalTemperatures(limits(10, 30, 50))).toBeNull();
    expect(cardinalTemperatures(limits(10, 29, 50))).toBeNull();
    expect(cardinalTemperatures(limits(10, 50, 50))).toBeNull();
    expect(cardinalTemperatures(limits(10, 31, 50))).toEqual(cardinal(10, 31, 50));
  });

  it("are known for the starters of yoghurt, not for those held long", () => {
    expect(cardinalTemperatures(organisms.thermophilus)).toEqual(cardinal(20, 40, 50));
    expect(cardinalTemperatures(organisms.bulgaricus)).toEqual(cardinal(22, 42.5, 52));
    expect(cardinalTemperatures(organisms.reuteri)).toBeNull();
    expect(cardinalTemperatures(organisms.gasseri)).toBeNull();
    // 22 degC is below the middle of 9 and 38.
    expect(cardinalTemperatures(organisms.cremoris)).toBeNull();
  });
});

describe("growthRate", () => {
  it("is the model's rate, or null where it cannot be asked", () => {
    expect(growthRate(organisms.thermophilus, 45)).toBeCloseTo(0.78125, 9);
    expect(growthRate(organisms.reuteri, 37)).toBeNull();
  });
});
