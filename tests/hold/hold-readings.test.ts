import { describe, expect, it } from "vitest";
import { pickHoldReadings } from "../../src/hold/hold-readings.ts";
import type { Phase } from "../../src/hold/hold.ts";

const phases: readonly Phase[] = [
  { kind: "warm-up", fromMinute: 0, toMinute: 9.5 },
  { kind: "hold", fromMinute: 9.5, toMinute: 20 },
  { kind: "disturbance", fromMinute: 20, toMinute: 30 },
  { kind: "hold", fromMinute: 30, toMinute: 40 },
];

describe("pickHoldReadings", () => {
  it("leaves disturbances out and gives weights that sum to the hold's length", () => {
    const minutes = Float64Array.from({ length: 41 }, (_, index) => index);
    const celsius = minutes.map((minute) => (minute > 20 && minute < 30 ? 30 : 40));
    const held = pickHoldReadings(minutes, celsius, phases);
    expect([...held.minutes]).toEqual([
      ...Array.from({ length: 11 }, (_, index) => 10 + index),
      ...Array.from({ length: 11 }, (_, index) => 30 + index),
    ]);
    expect(held.celsius.every((value) => value === 40)).toBe(true);
    expect(held.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(20.5, 9);
  });
});
