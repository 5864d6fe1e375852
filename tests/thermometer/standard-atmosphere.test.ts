import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  altitudeOfPressure,
  pressureAtAltitude,
  stationPressure,
} from "../../src/thermometer/standard-atmosphere.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { atmosphere } from "../reference/values/water.ts";

describeReferences(atmosphere);

describe("pressureAtAltitude", () => {
  it("knows nothing outside -500 to 5,000 m", () => {
    expect(pressureAtAltitude(-501)).toBeNull();
    expect(pressureAtAltitude(5001)).toBeNull();
    expect(pressureAtAltitude(NaN)).toBeNull();
    expect(pressureAtAltitude(-500)).toBeGreaterThan(1070);
    expect(pressureAtAltitude(5000)).toBeLessThan(545);
  });
});

describe("altitudeOfPressure", () => {
  it("is the way back from the pressure", () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 5000, noNaN: true }), (altitude) => {
        // A micrometre: powers of numbers near 1 in double precision.
        expect(altitudeOfPressure(pressureAtAltitude(altitude)!)).toBeCloseTo(altitude, 6);
      }),
    );
  });

  it("knows nothing outside the range", () => {
    expect(altitudeOfPressure(500)).toBeNull();
    expect(altitudeOfPressure(1100)).toBeNull();
    expect(altitudeOfPressure(NaN)).toBeNull();
  });
});

describe("stationPressure", () => {
  it("is the sea-level pressure at sea level, and the table's where that is 1013.25 hPa", () => {
    expect(stationPressure(1020, 0)).toBeCloseTo(1020, 9);
    expect(stationPressure(1013.25, 1000)).toBeCloseTo(898.763, 3);
  });

  it("moves with the weather in the same ratio", () => {
    expect(stationPressure(1023.3825, 1000)! / stationPressure(1013.25, 1000)!).toBeCloseTo(1.01);
    expect(stationPressure(1013.25, 9000)).toBeNull();
  });
});
