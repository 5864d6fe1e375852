import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saturationPressure, saturationTemperature } from "../../src/thermometer/saturation.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { saturation } from "../reference/values/water.ts";

describeReferences(saturation);

describe("saturation line of IAPWS-IF97", () => {
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
