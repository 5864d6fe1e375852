import { describe, expect, it } from "vitest";
import { plainNumber } from "../../src/input/plain-number.ts";

describe("plainNumber", () => {
  it.each([
    ["0.3", 0.3],
    ["-1", -1],
    ["95.50", "95.50"],
    ["0,3", "0,3"],
    ["203.4F", "203.4F"],
    ["01", "01"],
    ["+1", "+1"],
    ["high", "high"],
  ])("writes %j as %j", (written, plain) => {
    expect(plainNumber(written)).toBe(plain);
  });
});
