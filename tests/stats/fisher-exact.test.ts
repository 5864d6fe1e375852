import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fisherExact, leastPossible } from "../../src/stats/fisher-exact.ts";
import type { TwoByTwo } from "../../src/stats/fisher-exact.ts";
import { correctDigits } from "./correct-digits.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { fisher } from "../reference/values/tests-of-two.ts";

describeReferences(fisher);

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
