import { describe, expect, it } from "vitest";
import { scaleConflicts } from "../../src/thermometer/scale-conflicts.ts";
import { doubtOf, pointAt } from "./point.ts";

// Constructed cases.
const point = (check: number, reading: number, truth: number, u = 0.1) => ({
  ...pointAt(reading, truth, doubtOf("truth", u)),
  check,
});

describe("scaleConflicts", () => {
  it("finds nothing in a scale that is off by 2 degC in 100 or less", () => {
    expect(scaleConflicts([])).toEqual([]);
    expect(scaleConflicts([point(0, 0, 0)])).toEqual([]);
    expect(scaleConflicts([point(0, 0, 0), point(1, 100, 98.1)])).toEqual([]);
  });

  it("names both of two checks, with how far the scale would be off", () => {
    expect(scaleConflicts([point(0, 0, 0), point(3, 100, 97)])).toEqual([
      { check: 0, perHundred: -3 },
      { check: 3, perHundred: -3 },
    ]);
  });

  it("names only the one that the others contradict", () => {
    const found = scaleConflicts([point(0, 0.1, 0), point(1, 36, 38), point(2, 98.1, 98)]);
    expect(found.map((one) => one.check)).toEqual([1]);
  });

  it("does not blame the scale for what the checks' own doubts explain", () => {
    expect(scaleConflicts([point(0, 0, 0, 0.5), point(1, 30, 31, 0.5)])).toEqual([]);
    expect(scaleConflicts([point(0, 0, 0), point(1, 30, 31)])).toHaveLength(2);
  });

  it("does not compare checks at nearly the same temperature", () => {
    expect(scaleConflicts([point(0, 0, 0), point(1, 0.9, 0), point(2, 5, 5.9)])).toEqual([]);
  });
});
