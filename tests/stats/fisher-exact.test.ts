import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fisherExact, leastPossible } from "../../src/stats/fisher-exact.ts";
import type { TwoByTwo } from "../../src/stats/fisher-exact.ts";
import { correctDigits } from "./correct-digits.ts";

/** Ways to choose k of n, in whole numbers. */
const choose = (n: number, k: number): bigint => {
  let ways = 1n;
  for (let step = 1; step <= k; step += 1) ways = (ways * BigInt(n - k + step)) / BigInt(step);
  return ways;
};

/** Ways to every table with these margins. */
const allWays = (firstRow: number, secondRow: number, firstColumn: number): readonly bigint[] => {
  const ways: bigint[] = [];
  for (let count = 0; count <= firstRow; count += 1)
    if (count <= firstColumn && firstColumn - count <= secondRow)
      ways.push(choose(firstRow, count) * choose(secondRow, firstColumn - count));
  return ways;
};

const sum = (list: readonly bigint[]): bigint => list.reduce((total, one) => total + one, 0n);

/** The definition in whole numbers: no rounding, no tolerance. */
const byDefinition = (ways: readonly bigint[], seen: bigint): number => {
  return Number(sum(ways.filter((one) => one <= seen))) / Number(sum(ways));
};

const small = fc.integer({ min: 0, max: 9 });

describe("fisherExact", () => {
  it("is Fisher's tea tasting: 3 and 1 against 1 and 3", () => {
    // Fisher 1935, The Design of Experiments, ch. II (from memory): 70 choices, 16 + 1 of them as
    // good as this on either side, 34 / 70. fisher.test of R prints 0.4857.
    const found = fisherExact([
      [3, 1],
      [1, 3],
    ]);
    expect(found).toBeCloseTo(34 / 70, 14);
    expect(found.toFixed(4)).toBe("0.4857");
  });

  // fisher_exact of SciPy 1.17.1; where the counts are below 40000 in whole numbers as well
  // (Python), whose last digits are the ones here. Thousands of counts: 12 digits.
  // prettier-ignore
  it.each([
    [10, 2, 3, 15, 3571 / 6653325], [0, 5, 5, 0, 1 / 126], [1, 9, 11, 3, 41 / 14858],
    [8, 2, 1, 5, 5 / 143], [2, 3, 6, 4, 87 / 143], [0, 2, 6, 4, 5 / 11], [2, 0, 0, 2, 1 / 3],
    [4, 0, 0, 3, 1 / 35], [6, 1, 2, 7, 29 / 715], [10, 5, 10, 1, 59 / 299],
    [13, 7, 7, 13, 99703489 / 883631595], [20, 10, 10, 5, 1],
    [100, 2, 1000, 5, 0.13007593634300169], [5, 15, 20, 20, 0.09580440012477634],
    [5, 16, 20, 25, 0.1725864953812995], [30, 0, 2, 28, 8.387972010503789e-15],
    [190, 800, 200, 900, 0.574111858126088], [1500, 2300, 1600, 2100, 0.0009443724613369832],
  ])("%i %i / %i %i", (a, b, c, d, expected) => {
    expect(correctDigits(fisherExact([[a, b], [c, d]]), expected)).toBeGreaterThanOrEqual(12);
  });

  // Tens of thousands of counts by SciPy 1.17.1 alone, whose own rounding leaves ten digits.
  // prettier-ignore
  it.each([
    [12000, 8000, 11800, 8200, 0.042668822780824324], [100000, 100, 99000, 300, 8.059464702347075e-25],
  ])("%i %i / %i %i, large", (a, b, c, d, expected) => {
    expect(correctDigits(fisherExact([[a, b], [c, d]]), expected)).toBeGreaterThanOrEqual(10);
  });

  // prettier-ignore
  it.each([[0, 0, 3, 4], [0, 4, 0, 7], [5, 0, 0, 0], [0, 0, 0, 0], [1, 0, 0, 1]])(
    "can tell nothing from %i %i / %i %i",
    (a, b, c, d) => expect(fisherExact([[a, b], [c, d]])).toBe(1),
  );

  it("is the definition in whole numbers for any small table, ties and all", () => {
    fc.assert(
      fc.property(small, small, small, small, (a, b, c, d) => {
        const seen = choose(a + b, a) * choose(c + d, c);
        const expected = byDefinition(allWays(a + b, c + d, a + c), seen);
        expect(
          correctDigits(
            fisherExact([
              [a, b],
              [c, d],
            ]),
            expected,
          ),
        ).toBeGreaterThanOrEqual(12);
      }),
    );
  });

  it("does not care which way the table lies", () => {
    fc.assert(
      fc.property(small, small, small, small, (a, b, c, d) => {
        const found = fisherExact([
          [a, b],
          [c, d],
        ]);
        const turned: readonly TwoByTwo[] = [
          [
            [a, c],
            [b, d],
          ],
          [
            [c, d],
            [a, b],
          ],
          [
            [b, a],
            [d, c],
          ],
        ];
        for (const table of turned) expect(fisherExact(table)).toBeCloseTo(found, 12);
      }),
    );
  });

  it("refuses what is no count", () => {
    expect(
      fisherExact([
        [1.5, 2],
        [3, 4],
      ]),
    ).toBeNaN();
    expect(
      fisherExact([
        [-1, 2],
        [3, 4],
      ]),
    ).toBeNaN();
  });
});

describe("leastPossible", () => {
  it("is 2 in 70 for the tea tasting: all right or all wrong", () => {
    expect(leastPossible([4, 4], [4, 4])).toBeCloseTo(2 / 70, 14);
  });

  it("is the least of all tables with these margins", () => {
    fc.assert(
      fc.property(small, small, small, small, (a, b, c, d) => {
        const ways = allWays(a + b, c + d, a + c);
        const least = Math.min(...ways.map((one) => byDefinition(ways, one)));
        const found = leastPossible([a + b, c + d], [a + c, b + d]);
        expect(correctDigits(found, least)).toBeGreaterThanOrEqual(12);
      }),
    );
  });

  it("shows that two against three batches cannot reach 0.05, three against three neither", () => {
    // In whole numbers: 1 in 10; 2 in 20.
    expect(leastPossible([2, 3], [2, 3])).toBeCloseTo(0.1, 14);
    expect(leastPossible([3, 3], [3, 3])).toBeCloseTo(0.1, 14);
  });

  it("is 1 where a margin is nothing, and refuses totals that disagree", () => {
    expect(leastPossible([5, 0], [2, 3])).toBe(1);
    expect(leastPossible([5, 1], [2, 3])).toBeNaN();
    expect(leastPossible([5, -1], [2, 2])).toBeNaN();
  });
});
