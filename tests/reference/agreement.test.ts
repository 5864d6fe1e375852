import { describe, expect, it } from "vitest";
import { agreementOf } from "./agreement.ts";
import { printedNumber } from "./printed-number.ts";
import { value } from "./reference-values.ts";

// By hand.
describe("printedNumber", () => {
  it.each([
    ["0.0029", 0.0029, 1e-4, 2],
    ["-0.930", -0.93, 1e-3, 3],
    ["0.263889776E1", 2.63889776, 1e-8, 9],
    ["5.4E-4", 5.4e-4, 1e-5, 2],
    ["1000", 1000, 1, 4],
    ["3/8", 0.375, 0, 15],
  ])("reads %s", (text, number, lastPlace, significantDigits) => {
    expect(printedNumber(text)).toMatchObject({ value: number, lastPlace, significantDigits });
  });
});

// By hand: half a unit of the last place, a relative error of 1e-9 and 2e-9, a difference of 0.003.
describe("agreementOf", () => {
  it("asks for the printed places", () => {
    expect(agreementOf(value("a", "0.66", 0.6626), "as printed")).toEqual({
      agrees: true,
      found: "0.66",
      agreement: "within 0.005",
      asked: "as printed",
    });
    expect(agreementOf(value("a", "0.66", 0.6651), "as printed").agrees).toBe(false);
    expect(agreementOf(value("a", "0.66", NaN), "as printed").agrees).toBe(false);
  });

  it("counts digits", () => {
    const near = agreementOf(value("a", "1.000000000000", 1 + 2e-9), { digits: 8 });
    expect(near).toMatchObject({ agrees: true, found: "1.0000000", agreement: "8 digits" });
    expect(agreementOf(value("a", "1.0", 1 + 2e-9), { digits: 9 }).agrees).toBe(false);
    expect(agreementOf(value("a", "1.0", NaN), { digits: 1 }).agrees).toBe(false);
    expect(agreementOf(value("a", "1.0", 1), { digits: 9 }).agreement).toBe("11 digits or more");
  });

  it("allows a difference, absolute or relative", () => {
    expect(agreementOf(value("a", "212", 212.003), { absolute: 0.004 })).toMatchObject({
      agrees: true,
      agreement: "within 0.004",
    });
    expect(agreementOf(value("a", "212", 212.003), { absolute: 0.002 }).agrees).toBe(false);
    expect(agreementOf(value("a", "200", 200.003), { relative: 1e-5 }).agrees).toBe(false);
    expect(agreementOf(value("a", "200", 200.003), { relative: 2e-5 }).agrees).toBe(true);
  });
});
