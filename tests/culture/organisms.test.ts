import { describe, expect, it } from "vitest";
import type { GrowthLimits, SourcedTemperature } from "../../src/culture/culture.ts";
import * as organisms from "../../src/culture/organisms.ts";

const all = Object.values(organisms).filter(
  (one): one is GrowthLimits => typeof one === "object" && "organism" in one,
);
const figuresOf = ({ minimum, optimum, maximum }: GrowthLimits) => [minimum, optimum, maximum];
const values = (one: GrowthLimits) => figuresOf(one).map((figure) => figure?.celsius ?? null);

describe("growth limits", () => {
  it("repeat table 26.1 of Food Biochemistry and Food Processing (Hui, ed.), middles of its ranges", () => {
    expect(values(organisms.thermophilus)).toEqual([20, 40, 50]);
    expect(values(organisms.bulgaricus)).toEqual([22, (40 + 45) / 2, 52]);
    expect(values(organisms.helveticus)).toEqual([(20 + 22) / 2, 42, 54]);
    expect(values(organisms.acidophilus)).toEqual([(20 + 22) / 2, 37, (45 + 48) / 2]);
    expect(values(organisms.lactis)).toEqual([(8 + 10) / 2, (28 + 32) / 2, 40]);
    expect(values(organisms.cremoris)).toEqual([(8 + 10) / 2, 22, (37 + 39) / 2]);
    expect(values(organisms.leuconostoc)).toEqual([(4 + 10) / 2, (20 + 25) / 2, 37]);
  });

  it("repeat Engqvist (2018): culture collections grow L. reuteri at 36 and L. gasseri at 37 degC", () => {
    expect(values(organisms.reuteri)).toEqual([null, 36, null]);
    expect(values(organisms.gasseri)).toEqual([null, 37, null]);
  });

  it("repeat TEMPURA (Sato et al. 2020) for H. coagulans: 30, 40 to 57, 61 degC", () => {
    expect(values(organisms.coagulans)).toEqual([30, (40 + 57) / 2, 61]);
  });

  it("repeat what was seen at second hand of kefir, the moulds and natto", () => {
    // Digest of Bergey's Manual, vol. 3: L. kefiri grows at 15, not at 45 degC.
    expect(values(organisms.kefiri)).toEqual([null, null, 45]);
    // Mould reference page: 12 degC to 107.6 degF, which is 42 degC; one measured strain best at 34.
    expect(values(organisms.oligosporus)).toEqual([12, 34, 42]);
    // Mould reference page: optimum 32 to 36, at most 44 degC.
    expect(values(organisms.oryzae)).toEqual([null, (32 + 36) / 2, 44]);
    // Handbook chapter on natto: optimum about 40, no growth above 55 degC.
    expect(values(organisms.natto)).toEqual([null, 40, 55]);
  });

  it("are in order, and every figure names its work and what that prints", () => {
    expect(all.length).toBeGreaterThan(12);
    for (const one of all) {
      const known = figuresOf(one).filter(
        (figure): figure is SourcedTemperature => figure !== null,
      );
      const celsius = known.map((figure) => figure.celsius);
      expect(celsius, one.organism).toEqual(celsius.toSorted((a, b) => a - b));
      for (const { celsius: value, source } of known) {
        const printed = source.kind === "published" ? source.printed : "";
        const numbers = [...printed.matchAll(/[0-9.]+/g)].map(([number]) => Number(number));
        const [lowest, highest] = [Math.min(...numbers), Math.max(...numbers)];
        // The figure itself, or the middle of the range printed.
        expect(numbers.includes(value) || value === (lowest + highest) / 2, printed).toBe(true);
      }
    }
  });
});
