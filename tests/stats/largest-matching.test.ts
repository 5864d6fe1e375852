import { describe, expect, it } from "vitest";
import { largestMatching } from "../../src/stats/largest-matching.ts";
import { seededUniform } from "./seeded-noise.ts";

/** Every way to place the rows from `row` on, one after the other. */
const exhaustive = (pairs: readonly (readonly boolean[])[], row = 0, taken = 0): number => {
  if (row === pairs.length) return 0;
  let most = exhaustive(pairs, row + 1, taken);
  pairs[row]!.forEach((possible, column) => {
    const bit = 2 ** column;
    if (!possible || (taken & bit) > 0) return;
    most = Math.max(most, 1 + exhaustive(pairs, row + 1, taken | bit));
  });
  return most;
};

describe("largestMatching", () => {
  it("finds as many as an exhaustive search", () => {
    const uniform = seededUniform(11);
    const size = (): number => 1 + Math.floor(uniform() * 5);
    for (let draw = 0; draw < 2000; draw += 1) {
      const [rows, columns, share] = [size(), size(), uniform()];
      const pairs = Array.from({ length: rows }, () =>
        Array.from({ length: columns }, () => uniform() < share),
      );
      expect(largestMatching(pairs)).toBe(exhaustive(pairs));
    }
  });

  it("moves all that were placed before when the last needs it", () => {
    // Constructed: row k goes to columns k and k + 1, the last only to 0: all must move up one.
    const chain = Array.from({ length: 40 }, (_, row) =>
      Array.from({ length: 40 }, (__, column) =>
        row === 39 ? column === 0 : column === row || column === row + 1,
      ),
    );
    expect(largestMatching(chain)).toBe(40);
  });

  it("places none where there is none, or nowhere to go", () => {
    expect(largestMatching([])).toBe(0);
    expect(largestMatching([[], []])).toBe(0);
    expect(largestMatching([[false], [false]])).toBe(0);
  });
});
