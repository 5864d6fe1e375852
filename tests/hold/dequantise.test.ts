import { describe, expect, it } from "vitest";
import { dequantised } from "../../src/hold/dequantise.ts";
import { logged } from "./constructed.ts";

const risingSlowly = (m: number): number => 30 + 0.02 * m;

describe("dequantised", () => {
  it("gives back a slow straight course that was rounded to half degrees", () => {
    const { celsius } = logged(risingSlowly, { until: 500, resolution: 0.5 });
    const smooth = dequantised(celsius, 0.5);
    // Steps last 25 minutes; the change shows up to a minute late, 0.02 degC, and as much from averaging cells.
    for (let minute = 30; minute < 470; minute += 1) {
      expect(Math.abs(smooth[minute]! - risingSlowly(minute))).toBeLessThan(0.045);
    }
  });

  it("keeps a run flat that returns to where it came from, and real jumps", () => {
    const flat = Float64Array.of(40, 40, 40.5, 40.5, 40, 40);
    expect([...dequantised(flat, 0.5)]).toEqual([...flat]);
    const jump = Float64Array.of(40, 40, 30, 30, 20, 20);
    expect([...dequantised(jump, 0.5)]).toEqual([...jump]);
  });

  it("does nothing without a resolution", () => {
    expect([...dequantised(Float64Array.of(1, 2, 2, 3), 0)]).toEqual([1, 2, 2, 3]);
  });
});
