import { describe, expect, it } from "vitest";
import { boilingPoint } from "../../src/thermometer/boiling-point.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { boiling } from "../reference/values/water.ts";

describeReferences(boiling);

const atAltitude = (altitude: number) => boilingPoint({ altitude, pressure: null });

describe("boiling point by altitude", () => {
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
