import { describe, expect, it } from "vitest";
import { createTally } from "../../src/readings/tally.ts";

describe("createTally", () => {
  it("counts by reason with the first line, in the order of lines", () => {
    const tally = createTally();
    tally.add("spike", 9);
    tally.add("missing", 4, 3);
    tally.add("spike", 2);
    expect(tally.list()).toEqual([
      { reason: "spike", count: 2, firstLine: 2 },
      { reason: "missing", count: 3, firstLine: 4 },
    ]);
    expect(tally.total()).toBe(5);
  });
});
