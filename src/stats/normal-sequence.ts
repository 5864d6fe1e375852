import { normalQuantile } from "./normal.ts";

const golden = 0x9e3779b9;

/** One step of the 32-bit finaliser of MurmurHash3: spreads neighbouring integers over the whole range. */
const mix = (value: number): number => {
  let h = value | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
};

/**
 * Fixed standard normal numbers: the same `index` and `dimension` always give
 * the same number, so that the same readings always give the same verdict.
 *
 * Latin hypercube sampling (McKay, Beckman & Conover 1979): within each
 * dimension the `count` numbers fall one into each of `count` equally likely
 * strata, in an order that differs by dimension.
 *
 * @param count how many draws; @param dimensions numbers per draw
 * @returns count rows of `dimensions` numbers
 */
export const normalDraws = (count: number, dimensions: number): Float64Array[] => {
  const rows = Array.from({ length: count }, () => new Float64Array(dimensions));
  for (let dimension = 0; dimension < dimensions; dimension += 1) {
    const order = shuffled(count, dimension);
    for (let index = 0; index < count; index += 1) {
      rows[index]![dimension] = normalQuantile((order[index]! + 0.5) / count);
    }
  }
  return rows;
};

/** 0..count-1 in an order fixed by `key` (Fisher-Yates with hashed indices). */
const shuffled = (count: number, key: number): Uint32Array => {
  const order = Uint32Array.from({ length: count }, (_, index) => index);
  for (let last = count - 1; last > 0; last -= 1) {
    const other = mix(Math.imul(key + 1, golden) + last) % (last + 1);
    [order[last], order[other]] = [order[other]!, order[last]!];
  }
  return order;
};
