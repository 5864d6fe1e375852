import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { acceptableOffsets } from "../../src/culture/acceptance.ts";

describe("acceptableOffsets", () => {
  it("moves a lone value anywhere inside the window", () => {
    const found = acceptableOffsets(Float64Array.of(40), 40, {
      low: 38,
      high: 43,
      share: 1,
      ceiling: Infinity,
    });
    expect(found).toEqual([{ from: -2, to: 3 }]);
  });

  it("stops at the ceiling", () => {
    const found = acceptableOffsets(Float64Array.of(40), 41, {
      low: 38,
      high: 43,
      share: 1,
      ceiling: 42,
    });
    expect(found).toEqual([{ from: -2, to: 1 }]);
  });

  it("finds nothing when the values spread wider than the window", () => {
    const values = Float64Array.of(36, 38, 40, 42, 44);
    const requirement = { low: 39, high: 41, share: 0.95, ceiling: Infinity };
    expect(acceptableOffsets(values, 44, requirement)).toEqual([]);
  });

  it("agrees with counting, offset by offset", () => {
    const value = fc.integer({ min: 360, max: 440 });
    fc.assert(
      fc.property(
        fc.array(value, { minLength: 1, maxLength: 30 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: -600, max: 600 }),
        (tenths, twentieths, offsetTwentieths) => {
          const sorted = Float64Array.from(tenths, (x) => x / 10).toSorted();
          // Odd fortieths never fall on an edge, where rounding decides.
          const offset = (2 * offsetTwentieths + 1) / 40;
          const share = twentieths / 20;
          const acceptance = { low: 38, high: 42, share, ceiling: 43 };
          const inside = sorted.filter((x) => x + offset >= 38 && x + offset <= 42).length;
          const counted =
            inside >= Math.ceil(share * sorted.length - 1e-9) && sorted.at(-1)! + offset <= 43;
          const found = acceptableOffsets(sorted, sorted.at(-1)!, acceptance).some(
            ({ from, to }) => from <= offset && offset <= to,
          );
          expect(found).toBe(counted);
        },
      ),
      { numRuns: 500 },
    );
  });
});
