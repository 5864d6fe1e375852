import { describe, expect, it } from "vitest";
import { jacobianColumns } from "../../src/stats/curve-jacobian.ts";

const approach = ([a, b, c]: readonly number[], x: number): number => a! - b! * Math.exp(-x / c!);
const derivatives = ([, b, c]: readonly number[], x: number): number[] => {
  const e = Math.exp(-x / c!);
  return [1, -e, (-b! * e * x) / (c! * c!)];
};

describe("jacobianColumns", () => {
  // Central differences are good to about eps^(2/3) = 4e-11 of the values' size, 50.
  it("by differences agrees with the derivatives written out", () => {
    const x = [0, 1, 7, 30, 100];
    for (const parameters of [
      [41, 19, 12],
      [0, -3, 0.5],
    ]) {
      const exact = jacobianColumns(approach, derivatives, parameters, x);
      const found = jacobianColumns(approach, undefined, parameters, x);
      expect(found).toHaveLength(3);
      found.forEach((column, j) =>
        column.forEach((value, i) => expect(Math.abs(value - exact[j]![i]!)).toBeLessThan(5e-9)),
      );
    }
  });
});
