import { describe, expect, it } from "vitest";
import { assign } from "../../src/stats/assignment.ts";
import { seededUniform } from "./seeded-noise.ts";

type Columns = readonly (number | null)[];

/** Every way to place some rows, each in a column of its own, by pairs that may be used. */
const everyPlacing = (usable: readonly (readonly boolean[])[]): readonly Columns[] => {
  let all: readonly Columns[] = [[]];
  for (const row of usable) {
    all = all.flatMap((placed) => [
      ...row.flatMap((can, column) =>
        can && !placed.includes(column) ? [[...placed, column]] : [],
      ),
      [...placed, null],
    ]);
  }
  return all;
};

/** What is to be as high as possible, the first first: whole twentieths, so that sums are exact. */
const aims = (twentieths: readonly (readonly number[])[], columns: Columns): readonly number[] => {
  const values = columns.flatMap((column, row) =>
    column === null ? [] : [twentieths[row]![column]!],
  );
  return [
    values.length,
    Math.min(...values),
    values.reduce((sum, one) => sum + one, 0),
    ...columns.map((column) => -(column ?? 99)),
  ];
};

const isHigher = (a: readonly number[], b: readonly number[]): boolean => {
  const at = a.findIndex((one, i) => one !== b[i]);
  return at >= 0 && a[at]! > b[at]!;
};

const exhaustive = (twentieths: readonly (readonly number[])[], least: number): Columns => {
  const usable = twentieths.map((row) => row.map((one) => one >= least));
  const [first, ...others] = everyPlacing(usable);
  return others.reduce(
    (best, one) => (isHigher(aims(twentieths, one), aims(twentieths, best)) ? one : best),
    first!,
  );
};

describe("assign against every possible placing", () => {
  const uniform = seededUniform(13);
  const whole = (below: number): number => Math.floor(uniform() * below);

  // Constructed: few levels give many ties, at every size up to 5 x 5, a share of them impossible.
  it.each([
    ["two levels", 2],
    ["five levels", 5],
    ["twenty-one levels", 21],
  ])("%s", (_, levels) => {
    for (let draw = 0; draw < 1500; draw += 1) {
      const [rows, columns, gaps] = [1 + whole(5), 1 + whole(5), uniform() * 0.7];
      const twentieths = Array.from({ length: rows }, () =>
        Array.from({ length: columns }, () =>
          uniform() < gaps ? NaN : Math.round((whole(levels) * 20) / (levels - 1)),
        ),
      );
      const least = whole(16);
      const values = twentieths.map((row) => row.map((one) => one / 20));
      expect(assign(values, least / 20)).toEqual(exhaustive(twentieths, least));
    }
  });
});

describe("assign on larger matrices", () => {
  // Weakest: the highest threshold at which scipy.sparse.csgraph.maximum_bipartite_matching places
  // as many as at `least`. Sum: scipy.optimize.linear_sum_assignment above it, each pair raised by
  // 100 so that number comes first. SciPy 1.17.1; in 1009ths. Where the weakest is not heeded the
  // sum of the first is 10470, weakest 595, and of the fifth 48716, weakest 868.
  it.each([
    [12, 12, 0, 12, 690, 10229],
    [12, 12, 0.95, 4, 965, 3943],
    [30, 20, 0, 20, 868, 19540],
    [20, 30, 0.5, 20, 868, 19218],
    [50, 50, 0, 50, 871, 48698],
    [50, 50, 0.97, 35, 979, 34874],
    [8, 3, 0, 3, 930, 2809],
  ])("%i x %i, least %f", (rows, columns, least, placed, weakest, sum) => {
    const parts = Array.from({ length: rows }, (_, r) =>
      Array.from(
        { length: columns },
        (__, c) => (37 * r * r + 91 * c * c + 13 * r * c * (r + c) + 5) % 1009,
      ),
    );
    const found = assign(
      parts.map((row) => row.map((one) => one / 1009)),
      least,
    );
    const values = found.flatMap((column, row) => (column === null ? [] : [parts[row]![column]!]));
    expect([values.length, Math.min(...values), values.reduce((a, b) => a + b)]).toEqual([
      placed,
      weakest,
      sum,
    ]);
    expect(new Set(found.filter((one) => one !== null)).size).toBe(placed);
  });
});

// Constructed, by hand.
describe("assign, aim after aim", () => {
  it("rather places two weakly than one well", () => {
    const values = [
      [0.99, 0.5],
      [0.5, null],
    ];
    expect(assign(values, 0.5)).toEqual([1, 0]);
  });

  it("rather lifts the weakest than the sum", () => {
    const values = [
      [0.99, 0.7],
      [0.7, 0.5],
    ];
    expect(assign(values, 0.5)).toEqual([1, 0]);
  });

  it("lets rounding in the last digits decide nothing", () => {
    // 0.1 + 0.2 and 0.3 differ in the last digit, which alone would lift the weakest.
    const near = 0.1 + 0.2;
    expect(near).not.toBe(0.3);
    const values = [
      [0.3, near],
      [near, near],
    ];
    expect(assign(values, 0.2)).toEqual([0, 1]);
  });

  it("takes a pair at the least, and none below it", () => {
    expect(assign([[0.5]], 0.5)).toEqual([0]);
    expect(assign([[0.4999999999]], 0.5)).toEqual([null]);
    expect(assign([[0]], 0)).toEqual([0]);
  });

  it("leaves the last of equals without a column", () => {
    expect(assign([[0.8], [0.8], [0.8]], 0.5)).toEqual([0, null, null]);
    expect(assign([[0.8], [0.9], [0.8]], 0.5)).toEqual([null, 0, null]);
  });

  it("places none where none can be", () => {
    expect(assign([], 0)).toEqual([]);
    expect(assign([[], []], 0)).toEqual([null, null]);
    expect(
      assign(
        [
          [NaN, 0.2],
          [null, 0.1],
        ],
        0.3,
      ),
    ).toEqual([null, null]);
  });
});
