import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  parseDuration,
  parseFraction,
  parseNumber,
  parseRange,
  parseTemperature,
  parseTemperatureDifference,
} from "../src/quantity-text.ts";

// Conversions are exact by definition (degF = 1.8 degC + 32, NIST SP 811,
// appendix B.8): 100.4 degF = 38 degC, 63 degF = 17.2 degC, 77 degF = 25 degC.
// The texts themselves are constructed.

describe("parseTemperature", () => {
  it.each([
    ["38", 38, null],
    ["38C", 38, "degC"],
    ["38 °C", 38, "degC"],
    ["38 degC", 38, "degC"],
    ["38,5", 38.5, null],
    ["-4", -4, null],
    ["−4", -4, null],
    ["100.4F", 38, "degF"],
    ["100,4 °f", 38, "degF"],
    ["32F", 0, "degF"],
    ["212F", 100, "degF"],
  ])("reads %s", (text, value, unit) => {
    const found = parseTemperature(text);
    expect(found?.celsius).toBeCloseTo(value, 10);
    expect(found?.writtenUnit).toBe(unit);
  });

  it.each(["", " ", "warm", "38K", "38CC", "3 8", "1e3", "38..40", "NaN", "Infinity", "0x26", "."])(
    "refuses %j",
    (text) => expect(parseTemperature(text)).toBeNull(),
  );

  it("never gives NaN or an infinity, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const value = parseTemperature(text)?.celsius ?? 0;
        return Number.isFinite(value);
      }),
    );
    expect(parseTemperature("9".repeat(400))).toBeNull();
  });

  it("reads back what is written, in either unit", () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 2000 }), (tenths) => {
        const inCelsius = parseTemperature(`${tenths / 10}C`)?.celsius ?? Number.NaN;
        const inFahrenheit = parseTemperature(`${(tenths / 10) * 1.8 + 32}F`);
        // Only rounding of one multiplication and one addition lies between the two.
        return inFahrenheit === null || Math.abs(inFahrenheit.celsius - inCelsius) < 1e-9;
      }),
    );
  });
});

describe("parseTemperatureDifference", () => {
  it("scales degF without the offset", () => {
    expect(parseTemperatureDifference("0.9F")).toBeCloseTo(0.5, 12);
    expect(parseTemperatureDifference("0,5")).toBe(0.5);
    expect(parseTemperatureDifference("+-1.0 C")).toBe(1);
    expect(parseTemperatureDifference("±0.2")).toBe(0.2);
    expect(parseTemperatureDifference("-0.3")).toBe(-0.3);
    expect(parseTemperatureDifference("half")).toBeNull();
  });
});

describe("parseRange", () => {
  it("reads both ends in the unit written", () => {
    expect(parseRange("17..25")?.low.celsius).toBe(17);
    expect(parseRange("63F..77F")?.low.celsius).toBeCloseTo(17.2222, 4);
    expect(parseRange("63..77F")?.low.celsius).toBeCloseTo(17.2222, 4);
    expect(parseRange("63..77F")?.high.celsius).toBeCloseTo(25, 10);
    expect(parseRange("-5,5..10")?.low.celsius).toBe(-5.5);
  });

  it.each(["17", "17-25", "17..", "..25", "17..25..30", "a..b"])("refuses %j", (text) =>
    expect(parseRange(text)).toBeNull(),
  );
});

describe("parseDuration", () => {
  it.each([
    ["5s", 5],
    ["30 s", 30],
    ["10min", 600],
    ["1h", 3600],
    ["0.5 h", 1800],
    ["1,5min", 90],
    ["1:30:00", 5400],
    ["36:00:00", 129600],
  ])("reads %s", (text, seconds) => expect(parseDuration(text)).toBe(seconds));

  it("reads a bare number only where the caller says in what", () => {
    expect(parseDuration("36")).toBeNull();
    expect(parseDuration("36", "h")).toBe(129600);
  });

  it.each(["", "-5s", "5 parsecs", "5constructor", "1:30", "1:75:00", "s"])("refuses %j", (text) =>
    expect(parseDuration(text)).toBeNull(),
  );
});

describe("parseFraction and parseNumber", () => {
  it("reads shares", () => {
    expect(parseFraction("0.95")).toBe(0.95);
    expect(parseFraction("95%")).toBe(0.95);
    expect(parseFraction("95 %")).toBe(0.95);
    expect(parseFraction("95")).toBeNull();
    expect(parseFraction("-0.1")).toBeNull();
    expect(parseFraction("most")).toBeNull();
  });

  it("reads plain numbers", () => {
    expect(parseNumber(" 0,25 ")).toBe(0.25);
    expect(parseNumber("1.2.3")).toBeNull();
  });
});
