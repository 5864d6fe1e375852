import { describe, expect, it } from "vitest";
import type { SetUp } from "../../src/kitchen/kitchen.ts";
import { setUpKey } from "../../src/kitchen/set-up.ts";

// Constructed. 0.1 + 0.2 and 0.3 differ in their last digit (IEEE 754).
const one: SetUp = {
  appliance: "bath",
  setting: { kind: "step", celsius: 38 + (0.1 + 0.2) },
  container: "jars",
};

const same = (a: SetUp, b: SetUp): boolean => setUpKey(a) === setUpKey(b);

describe("setUpKey", () => {
  it("takes a step for the same in spite of rounding", () => {
    expect(same(one, { ...one, setting: { kind: "step", celsius: 38 + 0.3 } })).toBe(true);
  });

  it.each<readonly [string, Partial<SetUp>]>([
    ["another appliance", { appliance: "box" }],
    ["another container", { container: "basin" }],
    ["another step", { setting: { kind: "step", celsius: 38.4 } }],
    ["a mark of the step's number", { setting: { kind: "mark", mark: "38.3" } }],
    ["none", { setting: { kind: "fixed" } }],
  ])("parts %s", (_, other) => {
    expect(same(one, { ...one, ...other })).toBe(false);
  });

  it("parts a mark from a program of the same name", () => {
    const mark: SetUp = { ...one, setting: { kind: "mark", mark: "1" } };
    const program: SetUp = { ...one, setting: { kind: "program", program: "1" } };
    expect(same(mark, program)).toBe(false);
    expect(same(mark, { ...mark })).toBe(true);
  });

  it("does not run names together", () => {
    const a = setUpKey({ ...one, appliance: 'a","b', container: "c" });
    const b = setUpKey({ ...one, appliance: "a", container: 'b","c' });
    expect(a).not.toBe(b);
  });
});
