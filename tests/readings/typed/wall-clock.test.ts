import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clockText, dateText, dayOf, lengthText } from "../../../src/readings/typed/wall-clock.ts";

describe("dateText and clockText", () => {
  // Reference: the engine's own proleptic Gregorian calendar (ECMA-262, Date).
  it("agree with the engine's calendar", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 7_258_118_399 }), (seconds) => {
        const reference = new Date(seconds * 1000).toISOString();
        expect(`${dateText(dayOf(seconds))}T${clockText(seconds, true)}.000Z`).toBe(reference);
      }),
      { numRuns: 2000 },
    );
  });

  it("knows the leap days of the Gregorian calendar", () => {
    for (const date of ["1972-02-29", "2000-02-29", "2026-02-28", "2100-03-01", "1999-12-31"])
      expect(dateText(Date.parse(`${date}T00:00Z`) / 86_400_000)).toBe(date);
  });

  it("shows seconds only where there are any", () => {
    expect(clockText(22 * 3600 + 1800)).toBe("22:30");
    expect(clockText(22 * 3600 + 1805)).toBe("22:30:05");
  });
});

describe("lengthText", () => {
  it.each([
    [1500, "25 min"],
    [-1500, "25 min"],
    [3600, "1 h"],
    [7500, "2 h 5 min"],
  ])("%s s is %s", (seconds, text) => {
    expect(lengthText(seconds)).toBe(text);
  });
});
