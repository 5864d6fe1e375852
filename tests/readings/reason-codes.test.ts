import { describe, expect, it } from "vitest";
import { codeOf, good, reasonOf } from "../../src/readings/reason-codes.ts";

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
