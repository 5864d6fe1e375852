import { describe, expect, it } from "vitest";
import { indexesOf, pick, pickBytes, pickCounts } from "../../../src/readings/rows/pick.ts";

describe("pick", () => {
  it("takes the values at the indexes of marks", () => {
    const indexes = indexesOf(Uint8Array.of(0, 1, 1, 0, 1));
    expect([...indexes]).toEqual([1, 2, 4]);
    expect([...pick(Float64Array.of(1, 2.5, 3, 4, 5), indexes)]).toEqual([2.5, 3, 5]);
    expect([...pickBytes(Uint8Array.of(9, 8, 7, 6, 5), indexes)]).toEqual([8, 7, 5]);
    expect([...pickCounts(Uint32Array.of(10, 20, 30, 40, 70_000), indexes)]).toEqual([
      20, 30, 70_000,
    ]);
  });
});
