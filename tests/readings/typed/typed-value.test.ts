import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  celsiusOf,
  digitsIn,
  isNotTaken,
  readTypedValue,
} from "../../../src/readings/typed/typed-value.ts";

describe("readTypedValue", () => {
  it.each([
    ["41.2", "41.2", null],
    ["41,2", "41.2", null],
    ["41.20", "41.20", null],
    ["41.", "41", null],
    [".5", "0.5", null],
    ["041.2", "41.2", null],
    ["+41.2", "41.2", null],
    ["-3,5", "-3.5", null],
    ["−3", "-3", null],
    ["-0.0", "0.0", null],
    ["41.2C", "41.2", "degC"],
    ["41.2°c", "41.2", "degC"],
    ["105.8F", "105.8", "degF"],
    ["105.8°F", "105.8", "degF"],
    ["105.8degF", "105.8", "degF"],
  ])("%s", (word, digits, unit) => {
    expect(readTypedValue(word)).toEqual({ digits, unit });
  });

  it.each(["", "-", ".", "C", "41.2.3", "1,234.5", "4e1", "41K", "warm", "22:30"])(
    "%j is no temperature",
    (word) => {
      expect(readTypedValue(word)).toBeNull();
    },
  );

  it("takes a dash for a value not taken", () => {
    expect(["-", "–", "—", "-3", ""].map(isNotTaken)).toEqual([true, true, true, false, false]);
  });
});

describe("digitsIn", () => {
  it("leaves digits of the log's own unit as they were typed", () => {
    expect(digitsIn({ digits: "41.20", unit: "degC" }, "degC")).toBe("41.20");
    expect(digitsIn({ digits: "105.8", unit: null }, "degF")).toBe("105.8");
  });

  // 105.8 degF is 41 degC exactly, by the definition of the scale: (105.8 - 32) / 1.8.
  it("converts with one decimal more", () => {
    expect(digitsIn({ digits: "105.8", unit: "degF" }, "degC")).toBe("41.00");
    expect(digitsIn({ digits: "41.2", unit: "degC" }, "degF")).toBe("106.16");
    expect(digitsIn({ digits: "32", unit: "degF" }, "degC")).toBe("0.0");
  });

  it("loses nothing: the typed digits come back", () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 2660 }), (tenths) => {
        const digits = (tenths / 10).toFixed(1);
        const celsius = digitsIn({ digits, unit: "degF" }, "degC");
        expect(Number(celsiusOf(digits, "degF").toFixed(2))).toBeCloseTo(Number(celsius), 10);
        expect((Number(celsius) * 1.8 + 32).toFixed(1).replace("-0.0", "0.0")).toBe(
          digits.replace("-0.0", "0.0"),
        );
      }),
    );
  });
});
