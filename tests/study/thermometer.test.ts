import { describe, expect, it } from "vitest";
import { createRandom } from "../simulator/random.ts";
import { boilingAt, standardPressure, studyThermometer } from "./thermometer.ts";

const drawn = (kind: Parameters<typeof studyThermometer>[1]) =>
  Array.from({ length: 300 }, (_, seed) =>
    studyThermometer(createRandom(seed, "thermometer"), kind, { resolution: 0.1, noise: 0.02 }),
  );

describe("studyThermometer", () => {
  it("keeps a specified one within its accuracy", () => {
    for (const { faults, accuracy } of drawn("specified"))
      expect(Math.abs(faults.error)).toBeLessThanOrEqual(accuracy!);
  });

  it("leaves of a corrected one's error what its uncertainty says", () => {
    const left = drawn("corrected").map(
      (one) => (one.faults.error + one.correction) / one.uncertainty!,
    );
    const variance = left.reduce((sum, value) => sum + value * value, 0) / left.length;
    // 300 squares of a standard normal: standard error of their mean sqrt(2 / 300) = 0.082.
    expect(Math.abs(variance - 1)).toBeLessThan(0.33);
  });

  it("shows near 0 in ice and near its place's boiling point in boiling water", () => {
    for (const { checks } of drawn("checked")) {
      const [ice, boiling] = checks;
      expect(Math.abs(ice!.readings[0]!)).toBeLessThan(2.5);
      if (boiling?.kind !== "boiling") throw new Error("no boiling check");
      const expected = boilingAt(standardPressure(boiling.place.altitude!));
      // Five standard deviations of offset, slope and weather: hypot(0.5, 0.5, 0.25) degC each.
      expect(Math.abs(boiling.readings[0]! - expected)).toBeLessThan(3.8);
    }
  });
});

describe("boilingAt", () => {
  it("boils at steam tables' points (from memory: 101.32 kPa at 99.97 degC, 84.61 kPa at 95 degC)", () => {
    // These constants are made for 1 to 100 degC as a whole: some 0.05 degC off here, half of a pot's own doubt.
    expect(Math.abs(boilingAt(1013.2) - 99.97)).toBeLessThan(0.06);
    expect(Math.abs(boilingAt(846.1) - 95)).toBeLessThan(0.06);
  });

  it("has the pressure of the standard atmosphere (ISO 2533: 845.6 hPa at 1,500 m)", () => {
    expect(standardPressure(1500)).toBeCloseTo(845.6, 0);
  });
});
