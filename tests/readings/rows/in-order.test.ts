import { describe, expect, it } from "vitest";
import { putInOrder } from "../../../src/readings/rows/in-order.ts";
import { createTally } from "../../../src/readings/rows/tally.ts";

const ordered = (seconds: number[], wanted = seconds.map(() => 1)) => {
  const tally = createTally();
  const lines = Uint32Array.from(seconds, (_, at) => at + 2);
  const order = putInOrder(Float64Array.from(seconds), lines, Uint8Array.from(wanted), tally);
  return { ...order, rows: order.rows && [...order.rows], setAside: tally.list() };
};

describe("putInOrder", () => {
  it("leaves rows in order alone", () => {
    expect(ordered([0, 1, 2])).toEqual({ rows: null, moved: 0, firstMovedLine: 0, setAside: [] });
  });
  it("moves late rows and names the first", () => {
    expect(ordered([0, 3, 1, 2, 4])).toEqual({
      rows: [0, 2, 3, 1, 4],
      moved: 2,
      firstMovedLine: 4,
      setAside: [],
    });
  });
  it("keeps the first of two rows at one time", () => {
    expect(ordered([0, 2, 1, 2])).toMatchObject({
      rows: [0, 2, 1],
      setAside: [{ reason: "duplicate", count: 1, firstLine: 5 }],
    });
  });
  it("passes over rows that are not wanted", () => {
    expect(ordered([0, 9, 1], [1, 0, 1])).toMatchObject({ rows: [0, 2], moved: 0 });
  });
});
