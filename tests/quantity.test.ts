import { describe, expect, it } from "vitest";
import {
  celsiusDifferenceToFahrenheit,
  celsiusToFahrenheit,
  fahrenheitDifferenceToCelsius,
  fahrenheitToCelsius,
} from "../src/quantity.ts";

describe("conversions between degC and degF", () => {
  // Melting ice and boiling water as both scales fix them, and the point where
  // they meet (NIST SP 811, appendix B.8: exact by definition).
  it.each([
    [0, 32],
    [100, 212],
    [-40, -40],
    [37, 98.6],
    [38, 100.4],
  ])("%d degC is %d degF", (inCelsius, inFahrenheit) => {
    // Tolerance: one rounding of a double near 200.
    expect(celsiusToFahrenheit(inCelsius)).toBeCloseTo(inFahrenheit, 12);
    expect(fahrenheitToCelsius(inFahrenheit)).toBeCloseTo(inCelsius, 12);
  });

  it("leaves the offset out of a difference", () => {
    expect(celsiusDifferenceToFahrenheit(5)).toBe(9);
    expect(fahrenheitDifferenceToCelsius(1.8)).toBe(1);
  });
});
