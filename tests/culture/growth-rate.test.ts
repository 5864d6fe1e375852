import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { GrowthLimits, SourcedTemperature } from "../../src/culture/culture.ts";
import { cardinalTemperatures, growthRate, relativeRate } from "../../src/culture/growth-rate.ts";
import type { CardinalTemperatures } from "../../src/culture/growth-rate.ts";
import * as organisms from "../../src/culture/organisms.ts";
import { celsius } from "../../src/quantity.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { growth } from "../reference/values/growth.ts";

describeReferences(growth);

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
