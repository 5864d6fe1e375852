import { describe, expect, it } from "vitest";
import { fitLine } from "../../src/stats/line-fit.ts";
import { orthogonalPart, orthonormal } from "../../src/stats/orthonormal.ts";

const x = Float64Array.from({ length: 40 }, (_, i) => i / 3);
const ones = x.map(() => 1);

describe("orthonormal", () => {
  it("gives columns at right angles and of length one, even from nearly equal ones", () => {
    // Lauchli's case: three columns that differ by 1e-6 only; plain Gram-Schmidt loses their right angles.
    const columns = [0, 1, 2].map((own) =>
      Float64Array.of(1, ...[0, 1, 2].map((k) => (k === own ? 1e-6 : 0))),
    );
    const basis = orthonormal(columns);
    expect(basis).toHaveLength(3);
    basis.forEach((a, i) =>
      basis.forEach((b, j) =>
        expect(a.reduce((sum, value, k) => sum + value * b[k]!, 0)).toBeCloseTo(
          i === j ? 1 : 0,
          12,
        ),
      ),
    );
  });

  it("leaves out a column that the ones before explain", () => {
    expect(orthonormal([ones, x, x.map((value) => 3 * value - 2), ones.map(() => 0)])).toHaveLength(
      2,
    );
  });
});

describe("orthogonalPart", () => {
  it("leaves a least-squares fit's residuals", () => {
    const y = x.map((value) => Math.cos(value) + 0.2 * value);
    const line = fitLine(x, y);
    const rest = orthogonalPart(y, orthonormal([ones, x]));
    rest.forEach((value, i) =>
      expect(value).toBeCloseTo(y[i]! - line.intercept - line.slope * x[i]!, 12),
    );
  });
});
