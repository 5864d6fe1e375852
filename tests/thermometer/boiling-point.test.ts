import { describe, expect, it } from "vitest";
import { celsiusToFahrenheit } from "../../src/quantity.ts";
import { boilingPoint } from "../../src/thermometer/boiling-point.ts";

const atAltitude = (altitude: number) => boilingPoint({ altitude, pressure: null });

describe("boiling point by altitude", () => {
  // Published table over altitude in feet, degF, credited to NASA and NOAA; rounded there, and from
  // an older temperature scale, hence 0.25 degF.
  it.each([
    [0, 212],
    [500, 211.1],
    [1000, 210.2],
    [2000, 208.4],
    [5000, 203],
    [6000, 201.1],
    [8000, 197.4],
    [10000, 193.6],
  ])("at %d ft is %d degF", (feet, fahrenheit) => {
    const found = celsiusToFahrenheit(atAltitude(feet * 0.3048)!.celsius);
    expect(Math.abs(found - fahrenheit)).toBeLessThan(0.25);
  });

  // US Standard Atmosphere 1976 over geometric height, then IAPWS-IF97 by the Python library
  // iapws 1.5.2; 0.0005 degC covers 0.05 Pa of rounding in the tables.
  it.each([
    [0, 99.9743],
    [250, 99.1437],
    [500, 98.3126],
    [750, 97.4812],
    [1000, 96.6493],
    [1500, 94.9842],
    [2000, 93.3172],
    [2500, 91.6482],
    [3000, 89.977],
    [3500, 88.3036],
    [4000, 86.6277],
  ])("at %d m is %d degC", (metres, celsius) => {
    expect(Math.abs(atAltitude(metres)!.celsius - celsius)).toBeLessThan(0.0005);
  });

  it("is doubtful by what the weather does", () => {
    const sea = atAltitude(0)!;
    expect(sea.how).toBe("altitude");
    // 0.02765 degC per hPa near 1013 hPa (iapws 1.5.2); 8 hPa of weather, 10 m of 0.12 hPa.
    expect(sea.standardUncertainty).toBeCloseTo(0.02765 * Math.hypot(8, 1.2), 3);
  });
});

describe("boiling point by pressure", () => {
  it("takes a pressure read on the spot, whatever the altitude", () => {
    const pressure = { hectopascal: 990, reduced: "station" } as const;
    const found = boilingPoint({ altitude: 1500, pressure })!;
    // iapws 1.5.2.
    expect(Math.abs(found.celsius - 99.3252)).toBeLessThan(0.0005);
    expect(found.how).toBe("station pressure");
    expect(found.standardUncertainty).toBeCloseTo(0.028, 3);
    expect(boilingPoint({ altitude: null, pressure })).toEqual(found);
  });

  it("takes a sea-level pressure up to the altitude", () => {
    const pressure = { hectopascal: 1013.25, reduced: "sea-level" } as const;
    const found = boilingPoint({ altitude: 1000, pressure })!;
    expect(Math.abs(found.celsius - 96.6493)).toBeLessThan(0.0005);
    expect(found.pressure).toBeCloseTo(898.763, 2);
    expect(found.how).toBe("sea-level pressure");
    expect(found.standardUncertainty).toBeLessThan(atAltitude(1000)!.standardUncertainty / 3);
  });

  it("is null where nothing is known, or nothing that can be", () => {
    expect(boilingPoint({ altitude: null, pressure: null })).toBeNull();
    const seaLevel = { hectopascal: 1013, reduced: "sea-level" } as const;
    expect(boilingPoint({ altitude: null, pressure: seaLevel })).toBeNull();
    expect(atAltitude(9000)).toBeNull();
    expect(
      boilingPoint({ altitude: 0, pressure: { hectopascal: 101325, reduced: "station" } }),
    ).toBeNull();
  });
});
