import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cholesky, multiplyLower, solveLower } from "../../src/stats/cholesky.ts";

describe("cholesky", () => {
  it("factors a matrix worked by hand", () => {
    // Constructed: L = [[2,0,0],[6,1,0],[-8,5,3]], so A = L L' has whole numbers throughout.
    const matrix = Float64Array.from([4, 12, -16, 12, 37, -43, -16, -43, 98]);
    expect(Array.from(cholesky(matrix, 3)!)).toEqual([2, 0, 0, 6, 1, 0, -8, 5, 3]);
  });

  it("refuses a matrix that is not positive definite", () => {
    expect(cholesky(Float64Array.from([1, 2, 2, 1]), 2)).toBeNull();
    expect(cholesky(Float64Array.from([Number.NaN]), 1)).toBeNull();
  });

  it("solves what it multiplies", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 3, maxLength: 3 }),
        (z) => {
          const lower = Float64Array.from([2, 0, 0, 6, 1, 0, -8, 5, 3]);
          const back = solveLower(lower, 3, multiplyLower(lower, 3, z));
          for (let i = 0; i < 3; i += 1) expect(back[i]).toBeCloseTo(z[i]!, 10);
        },
      ),
    );
  });
});
