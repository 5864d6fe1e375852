import { describe, expect, it } from "vitest";
import { createTally } from "../../../src/readings/rows/tally.ts";
import { codeOf, good, reasonOf } from "../../../src/readings/rows/tally.ts";

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

describe("reason codes", () => {
  it("go there and back, none of them good", () => {
    for (const reason of [
      "missing",
      "unparseable-temperature",
      "text-flag",
      "sensor-fault",
      "out-of-range",
      "spike",
    ] as const) {
      expect(reasonOf(codeOf(reason))).toBe(reason);
      expect(codeOf(reason)).not.toBe(good);
    }
  });
});
