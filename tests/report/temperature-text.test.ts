import { describe, expect, it } from "vitest";
import {
  askedRange,
  askedTemperature,
  correctionWithUncertainty,
  difference,
  differenceWithUncertainty,
  perHour,
  perHourRange,
  temperature,
  temperatureRange,
  temperatureWithUncertainty,
  tolerance,
  expandedUncertainty,
  expectedLimits,
  expectedTemperature,
  uncertainty,
} from "../../src/report/temperature-text.ts";
import { markupWriting, plainWriting, terminalWriting } from "../../src/report/writing.ts";

const inCelsius = plainWriting("degC");
const inFahrenheit = plainWriting("degF");
const ascii = terminalWriting("degC", true);

describe("temperatures in both units", () => {
  // Fixed points by definition of the scale: 0 degC = 32 degF, 100 degC = 212 degF,
  // and -40 is the same on both (NIST SP 811, B.8: t/degF = 1.8 t/degC + 32).
  it("puts the person's unit first", () => {
    expect(temperature(inCelsius, 100)).toBe("100.0 °C (212.0 °F)");
    expect(temperature(inFahrenheit, 0)).toBe("32.0 °F (0.0 °C)");
    expect(askedTemperature(inCelsius, -40)).toBe("−40 °C (−40 °F)");
    expect(temperature(inCelsius, 40.8)).toBe("40.8 °C (105.4 °F)");
  });

  it("writes ranges with one unit sign", () => {
    expect(askedRange(inFahrenheit, 38, 43)).toBe("100.4 to 109.4 °F (38 to 43 °C)");
    expect(temperatureRange(inCelsius, 40.23, 41.26)).toBe("40.2 to 41.3 °C (104.4 to 106.3 °F)");
  });

  it("writes both ends of a range to the same place in each unit", () => {
    // 45 degC is 113 degF exactly (NIST SP 811, B.8).
    expect(askedRange(inCelsius, 41, 45)).toBe("41 to 45 °C (105.8 to 113.0 °F)");
    expect(askedRange(inCelsius, 36.5, 39)).toBe("36.5 to 39.0 °C (97.7 to 102.2 °F)");
    expect(askedRange(inCelsius, 20, 25)).toBe("20 to 25 °C (68 to 77 °F)");
    expect(perHourRange(inCelsius, -0.001, 0.02)).toBe(
      "0.00 to +0.02 °C (0.00 to +0.04 °F) an hour",
    );
  });

  it("tells no rate finer than hundredths of a degree an hour", () => {
    expect(perHour(inCelsius, 0.008)).toBe("+0.01 °C (+0.01 °F) an hour");
    expect(perHour(inCelsius, -0.004)).toBe("less than 0.01 °C (0.02 °F) an hour");
    expect(perHourRange(inFahrenheit, -0.004, 0.001)).toBe("within ±0.02 °F (±0.01 °C) an hour");
  });

  it("converts differences and rates without the offset of 32", () => {
    expect(difference(inCelsius, 1)).toBe("1.0 °C (1.8 °F)");
    expect(difference(inFahrenheit, 5)).toBe("9.0 °F (5.0 °C)");
    expect(perHour(inCelsius, 0.1)).toBe("+0.10 °C (+0.18 °F) an hour");
    expect(perHourRange(inCelsius, -0.05, 0.1)).toBe(
      "−0.05 to +0.10 °C (−0.09 to +0.18 °F) an hour",
    );
    expect(tolerance(inCelsius, 0.5)).toBe("±0.5 °C (±0.9 °F)");
  });

  it("rounds value and uncertainty together, both units at the place that degC decides", () => {
    expect(temperatureWithUncertainty(inCelsius, 40.834, 0.31)).toBe(
      "40.83 ± 0.31 °C (105.50 ± 0.56 °F)",
    );
  });

  it("rounds an uncertainty alone by the same rule, with two decimals at most", () => {
    // As in "40.83 ± 0.31 °C (105.50 ± 0.56 °F)": 31 keeps two digits, and 0.56 stays at that place.
    expect(uncertainty(inCelsius, 0.31)).toBe("0.31 °C (0.56 °F)");
    expect(uncertainty(inCelsius, 0.49)).toBe("0.5 °C (0.9 °F)");
    expect(expandedUncertainty(inCelsius, 0.65)).toBe("±0.7 °C (±1.2 °F)");
    expect(uncertainty(inCelsius, 0)).toBe("0.00 °C (0.00 °F)");
    expect(uncertainty(inCelsius, 0.02887)).toBe("0.03 °C (0.05 °F)");
    expect(uncertainty(inCelsius, 1.04)).toBe("1.0 °C (1.9 °F)");
    expect(uncertainty(inCelsius, 0.001)).toBe("< 0.01 °C (0.02 °F)");
  });

  it("keeps to ASCII where asked, and ties number and unit in markup", () => {
    expect(tolerance(ascii, 1)).toBe("+-1\u00a0degC (+-1.8\u00a0degF)");
    expect(temperature(ascii, -3)).toBe("-3.0\u00a0degC (26.6\u00a0degF)");
    expect(temperature(markupWriting("degC"), 38)).toBe("38.0\u00a0°C (100.4\u00a0°F)");
  });
});

describe("differences with their doubt", () => {
  it("are rounded together, without the offset of 32", () => {
    expect(differenceWithUncertainty(inCelsius, 0.834, 0.31)).toBe(
      "0.83 ± 0.31 °C (1.50 ± 0.56 °F)",
    );
    expect(differenceWithUncertainty(inFahrenheit, 0.834, 0.31)).toBe(
      "1.50 ± 0.56 °F (0.83 ± 0.31 °C)",
    );
  });

  it("carry a sign where they are to be added, and none on zero", () => {
    expect(correctionWithUncertainty(inCelsius, 0.834, 0.31)).toBe(
      "+0.83 ± 0.31 °C (+1.50 ± 0.56 °F)",
    );
    expect(correctionWithUncertainty(inCelsius, -0.834, 0.31)).toBe(
      "−0.83 ± 0.31 °C (−1.50 ± 0.56 °F)",
    );
    expect(correctionWithUncertainty(inCelsius, 0, 0.57)).toBe("0.0 ± 0.6 °C (0.0 ± 1.0 °F)");
    expect(correctionWithUncertainty(ascii, 0.1, 0.2).replaceAll("\u00a0", " ")).toBe(
      "+0.10 +- 0.20 degC (+0.18 +- 0.36 degF)",
    );
  });

  it("are never parted from it at a line's end", () => {
    const text = correctionWithUncertainty(markupWriting("degC"), 0.834, 0.31);
    expect(text.split(" ").length).toBe(2);
  });
});

describe("a temperature to be expected", () => {
  it("is rounded by its uncertainty, but never finer than tenths nor coarser than whole degrees", () => {
    expect(expectedTemperature(inCelsius, 38.04, 0.2)).toBe("38.0 °C (100.5 °F)");
    // 5 degC is one digit, 0.4 keeps a tenth (rule of number-format.ts); degF follows.
    expect(expectedTemperature(inCelsius, 38.04, 5)).toBe("38 °C (100 °F)");
    expect(expectedTemperature(inCelsius, 38.04, 40)).toBe("38 °C (100 °F)");
    expect(expectedTemperature(inCelsius, 38.04, 0)).toBe("38.0 °C (100.5 °F)");
  });

  it("has as many decimals in either unit, whichever comes first", () => {
    // 5.9 degC is one digit, 10.6 degF would be two: degC decides.
    for (const doubt of [0.2, 0.34, 0.36, 0.53, 0.6, 3.4, 5.9]) {
      for (const writing of [inCelsius, inFahrenheit]) {
        const decimals = [...expectedTemperature(writing, 43.46, doubt).matchAll(/[\d.]+ °/g)].map(
          ([figure]) => figure.split(".")[1]?.length ?? 0,
        );
        expect(decimals[0]).toBe(decimals[1]);
      }
    }
    expect(expectedTemperature(inCelsius, 43.46, 0.6)).toBe("43.5 °C (110.2 °F)");
  });

  it("has its limits in the same places", () => {
    expect(expectedLimits(inCelsius, { low: 37.13, high: 38.94 }, 0.4)).toBe(
      "37.1 and 38.9 °C (98.8 and 102.1 °F)",
    );
  });
});
