import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saturationPressure, saturationTemperature } from "../../src/thermometer/saturation.ts";

describe("saturation line of IAPWS-IF97", () => {
  // IAPWS R7-97(2012), table 35: program verification, MPa: all nine printed digits (relative
  // 1e-9 would be less than the rounding of some).
  it.each([
    [300, 0.353658941e-2],
    [500, 0.263889776e1],
    [600, 0.123443146e2],
  ])("pressure at %d K", (kelvin, megapascal) => {
    const found = saturationPressure(kelvin - 273.15)! / 10_000;
    expect(found.toPrecision(9)).toBe(megapascal.toPrecision(9));
  });

  // The same release, table 36, K.
  it.each([
    [0.1, 0.372755919e3],
    [1, 0.453035632e3],
    [10, 0.584149488e3],
  ])("temperature at %d MPa", (megapascal, kelvin) => {
    const found = saturationTemperature(megapascal * 10_000)! + 273.15;
    expect(found.toPrecision(9)).toBe(kelvin.toPrecision(9));
  });

  // IAPWS-IF97 by the Python library iapws 1.5.2, degC.
  it.each([
    [850, 95.1253],
    [900, 96.687],
    [950, 98.1783],
    [980, 99.0421],
    [990, 99.3252],
    [1000, 99.6059],
    [1013.25, 99.9743],
    [1020, 100.1604],
    [1030, 100.4343],
    [1040, 100.706],
  ])("boils under %d hPa at %d degC", (hectopascal, celsius) => {
    expect(Math.abs(saturationTemperature(hectopascal)! - celsius)).toBeLessThan(0.0001);
  });

  it("comes back from the pressure to the temperature", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 370, noNaN: true }), (celsius) => {
        // The two equations are one quadratic form, so only rounding is between them.
        expect(saturationTemperature(saturationPressure(celsius)!)).toBeCloseTo(celsius, 6);
      }),
    );
  });

  it("is null where the equation does not hold", () => {
    for (const celsius of [-0.01, 374, NaN]) expect(saturationPressure(celsius)).toBeNull();
    for (const hectopascal of [6, 220_641, -1, NaN])
      expect(saturationTemperature(hectopascal)).toBeNull();
  });
});
