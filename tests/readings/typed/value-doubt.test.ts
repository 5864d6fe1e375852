import { describe, expect, it } from "vitest";
import { valueDoubt } from "../../../src/readings/typed/value-doubt.ts";

const since = (celsius: number | null, minutes = 10) =>
  celsius === null ? null : { celsius, minutes };

// Constructed slips; the bounds are the ones stated in valueDoubt's own description.
describe("valueDoubt", () => {
  it.each([
    ["41.2", "degC", null],
    ["41.2", "degC", 40.9],
    ["20.1", "degC", 45.1],
    ["-40", "degC", null],
    ["106.2", "degF", 41],
    ["212", "degF", null],
    ["100.4", "degC", 90],
  ] as const)("%s %s after %s is not asked about", (digits, unit, before) => {
    expect(valueDoubt(digits, unit, since(before), false)).toBeNull();
  });

  it.each([
    ["412", "degC", 41, "outside -40..130", "Did you mean 41.2?"],
    ["412", "degC", 20.1, "outside -40..130", "Did you mean 41.2?"],
    ["105.8", "degC", 20.1, "hotter than boiling water", "Did you mean 105.8F?"],
    ["412", "degC", null, "outside -40..130", "Did you mean 41.2?"],
    ["4.12", "degC", 41, "37 degC from the reading before (41)", "Did you mean 41.2?"],
    ["14.2", "degC", 41, "27 degC from", "Did you mean 41.2?"],
    ["105.8", "degC", 41.2, "hotter than boiling water", "Did you mean 105.8F?"],
    ["105.8", "degC", null, "hotter than boiling water", "Did you mean 105.8F?"],
    ["41.2", "degF", 41, "65 degF from the reading before (105.8)", "Did you mean 41.2C?"],
    ["67", "degC", 41, "26 degC from", ""],
    ["-41", "degC", null, "outside", ""],
  ] as const)("%s %s after %s: %s", (digits, unit, before, why, advice) => {
    const doubt = valueDoubt(digits, unit, since(before), false);
    expect(doubt?.why).toContain(why);
    expect(doubt?.advice).toBe(advice);
  });

  it("lets cold water warm up, and only that", () => {
    expect(valueDoubt("41.1", "degC", since(13.2, 60), false)).toBeNull();
    expect(valueDoubt("41.1", "degC", since(13.2, 5), false)).not.toBeNull();
    expect(valueDoubt("71.1", "degC", since(13.2, 60), false)).not.toBeNull();
    expect(valueDoubt("13.2", "degC", since(41.1, 60), false)?.why).toContain("28 degC from");
  });

  it("lets pass what is hot but has its letter", () => {
    expect(valueDoubt("105.8", "degC", null, true)).toBeNull();
  });
});
