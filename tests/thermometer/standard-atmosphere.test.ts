import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  altitudeOfPressure,
  pressureAtAltitude,
  stationPressure,
} from "../../src/thermometer/standard-atmosphere.ts";

describe("pressureAtAltitude", () => {
  // US Standard Atmosphere 1976 over geometric altitude, Pa. First column: as tables print it, one
  // decimal, 250 m cut off rather than rounded, so one unit of that. Second: the formula in Python
  // (NumPy 2.4.6) to two decimals. Public tables print 74692.7 at 2,500 m, which it does not support.
  it.each([
    [0, 101325, 101325],
    [250, 98357.6, 98357.65],
    [500, 95461.3, 95461.29],
    [750, 92634.6, 92634.6],
    [1000, 89876.3, 89876.29],
    [1500, 84559.7, 84559.68],
    [2000, 79501.4, 79501.42],
    [2500, null, 74691.76],
    [3000, 70121.2, 70121.16],
    [3500, 65780.4, 65780.39],
    [4000, 61660.4, 61660.44],
  ])("at %d m is %d Pa", (altitude, printed, recomputed) => {
    const pascal = pressureAtAltitude(altitude)! * 100;
    if (printed !== null) expect(Math.abs(pascal - printed)).toBeLessThan(0.1);
    expect(Math.abs(pascal - recomputed)).toBeLessThan(0.006);
  });

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
