import { describe, expect, it } from "vitest";
import { codeOf } from "../../../src/readings/rows/tally.ts";
import { pick } from "../../../src/readings/rows/pick.ts";
import {
  finiteCells,
  markCodes,
  markLeaps,
  toCelsius,
} from "../../../src/readings/cells/temperature-cells.ts";

describe("temperature cells", () => {
  it("converts degF in place", () => {
    const values = Float64Array.of(32, 212, 98.6);
    toCelsius(values, "degF");
    expect(Array.from(values, (value) => Number(value.toFixed(9)))).toEqual([0, 100, 37]);
  });

  it("marks codes and impossible values, not room temperature", () => {
    const celsius = Float64Array.of(20, -127, 700, 41);
    const reasons = new Uint8Array(4);
    markCodes(celsius, reasons);
    expect([...reasons]).toEqual([0, codeOf("sensor-fault"), codeOf("out-of-range"), 0]);
    expect(Number.isNaN(celsius[1])).toBe(true);
  });

  it("marks a lone 85.0 and leaves missing cells as they are", () => {
    const celsius = Float64Array.of(40, 40.1, NaN, 85, 40, 40.1, 40.2);
    const reasons = Uint8Array.of(0, 0, codeOf("missing"), 0, 0, 0, 0);
    markLeaps(Float64Array.of(0, 1, 2, 3, 4, 5, 6), celsius, reasons);
    expect([...reasons]).toEqual([0, 0, codeOf("missing"), codeOf("sensor-fault"), 0, 0, 0]);
  });

  it("picks the finite", () => {
    expect(finiteCells(Float64Array.of(1, 2))).toBeNull();
    const values = Float64Array.of(1, NaN, 3);
    expect([...pick(values, finiteCells(values)!)]).toEqual([1, 3]);
  });
});
