import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hampel } from "../../src/stats/hampel.ts";
import { median, medianAbsoluteDeviation, scaledMad } from "../../src/stats/median.ts";

const around = (value: number): number[] => [40.1, 40.2, 40.0, 40.3, value, 40.2, 40.1, 40.2, 40.4];

describe("hampel", () => {
  // Constructed (85.0 imitates a sensor's reset value), medians by arithmetic;
  // definition: window 2k + 1 cut short at the ends, flagged beyond 3 scaled MAD.
  it("flags two spikes and nothing else", () => {
    // prettier-ignore
    const values = [40.1, 40.2, 40.0, 40.3, 47.5, 40.2, 40.1, 40.2, 40.4, 85.0, 40.3, 40.2];
    // prettier-ignore
    const expected = [40.15, 40.2, 40.2, 40.2, 40.2, 40.2, 40.3, 40.3, 40.2, 40.25, 40.3, 40.35];
    const { flagged, medians } = hampel(values, 3, 3);
    expect([...flagged]).toEqual([0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0]);
    medians.forEach((value, i) => expect(value).toBeCloseTo(expected[i]!, 12));
  });

  // The scaled MAD is 0.14826 everywhere in the case above, so 40.3 + 3 * 0.14826 = 40.745 is the edge.
  it("flags just beyond the threshold and not just before", () => {
    expect(hampel(around(40.64), 3, 3).flagged[4]).toBe(0);
    expect(hampel(around(40.65), 3, 3).flagged[4]).toBe(1);
  });

  it("leaves single steps of flat quantised readings alone under a floor", () => {
    const flat = [40, 40, 40, 40, 40.1, 40, 40, 40, 40, 42, 40, 40, 40];
    expect(hampel(flat, 3, 3).flagged[4]).toBe(1);
    const { flagged } = hampel(flat, 3, 3, 0.05);
    expect([flagged[4], flagged[9]]).toEqual([0, 1]);
  });

  it("is the definition, written out slowly", () => {
    const series = fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 60 });
    fc.assert(
      fc.property(series, fc.integer({ min: 0, max: 8 }), (values, k) => {
        const { flagged, medians } = hampel(values, k, 2.5, 1);
        values.forEach((value, i) => {
          const window = values.slice(Math.max(0, i - k), i + k + 1);
          const spread = Math.max(1, scaledMad * medianAbsoluteDeviation(window));
          expect(medians[i]).toBe(median(window));
          expect(flagged[i]).toBe(Math.abs(value - median(window)) > 2.5 * spread ? 1 : 0);
        });
      }),
    );
  });
});
