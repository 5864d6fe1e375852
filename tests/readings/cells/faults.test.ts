import { describe, expect, it } from "vitest";
import { classifyTemperature, powerOnFaults } from "../../../src/readings/cells/faults.ts";
import { fahrenheitToCelsius } from "../../../src/quantity.ts";

/** A DS18B20's register, 1/16 degC to a count (data sheet, temperature register format). */
const register = (code: number): number => code / 16;

describe("classifyTemperature", () => {
  it.each([
    // -127 and -196.6 degF: header of the common one-wire driver library.
    ["disconnected", -127],
    ["disconnected, degF read as such", fahrenheitToCelsius(-196.6)],
    ["disconnected, degF taken for degC", -196.6],
    // 0x07FF: failed conversion, Linux kernel drivers/w1/slaves/w1_therm.c.
    ["failed conversion", register(0x07ff)],
    ["failed conversion, two decimals", 127.94],
    ["all bits set", register(0x7fff)],
    ["filler 999", 999],
    ["filler -999", -999],
    ["filler 9999", 9999],
    ["filler -9999 in degF", fahrenheitToCelsius(-9999)],
  ])("%s is a sensor's fault", (_name, value) => {
    expect(classifyTemperature(value)).toBe("sensor-fault");
  });

  // Codes of the data sheet's table of temperatures within its range are temperatures.
  it.each([0x00a2, 0x0008, 0x0000, 0xfff8 - 0x10000, 0xff5e - 0x10000, 0xfe6f - 0x10000, 0x0191])(
    "register %d is a temperature",
    (code) => expect(classifyTemperature(register(code))).toBeNull(),
  );

  it("takes any temperature that water, ice, air or steam has for one, and 85 too", () => {
    for (let tenths = -549; tenths < 1250; tenths++)
      expect(classifyTemperature(tenths / 10)).toBeNull();
  });

  it("sets aside what no water test shows", () => {
    expect(classifyTemperature(160.1)).toBe("out-of-range");
    expect(classifyTemperature(-60.1)).toBe("out-of-range");
    expect(classifyTemperature(500)).toBe("out-of-range");
    expect(classifyTemperature(160)).toBeNull();
    expect(classifyTemperature(-60)).toBeNull();
  });
});

describe("powerOnFaults", () => {
  /** Constructed series; `expected` are the places marked. 85.0 is 0x0550, the data sheet's power-on value. */
  const cases: readonly (readonly [string, readonly number[], readonly number[]])[] = [
    ["alone in a hold", [40.1, 40.2, 85, 40.2, 40.1], [2]],
    ["three on end", [40.1, 40.2, 85, 85, 85, 40.1], [2, 3, 4]],
    ["at the start", [register(0x0550), 21.1, 21.1, 21.2], [0]],
    ["two at the start", [85, 85, 21.1, 21.1], [0, 1]],
    ["at the end", [40.1, 40.2, 85], [2]],
    ["185.0 degF", [40, 40.1, fahrenheitToCelsius(185), 40.1, 40], [2]],
    ["beside a missing reading", [40.1, NaN, 85, NaN, 40.2, 40.1], [2]],
    ["with a missing reading between", [40.1, 40.2, 85, NaN, 85, 40.1, 40.2], [2, 4]],
    ["passing through slowly", [84.4, 84.7, 85, 85.3, 85.6], []],
    ["heating step that stays", [83.1, 84.2, 85, 85, 85, 84.9], []],
    ["heating step by hand", [20, 50, 85, 85, 60, 45], []],
    ["heating fast", [65, 75, 85, 95, 99], []],
    ["85.1", [40.1, 40.2, 85.1, 40.2, 40.1], []],
    ["nothing else", [85, 85, 85], []],
    ["hold at room temperature", [21, 21, 21, 21], []],
    ["none", [], []],
  ];
  it.each(cases)("%s", (_name, series, expected) => {
    const marks = powerOnFaults(Float64Array.from(series));
    expect(marks.length).toBe(series.length);
    expect([...marks.keys()].filter((index) => marks[index] === 1)).toEqual(expected);
  });
});
