import { describe, expect, it } from "vitest";
import {
  looksLikeNone,
  signedDifference,
  signedRange,
  sizeOfDifference,
} from "../../src/report/signed-difference.ts";
import { plainWriting, terminalWriting } from "../../src/report/writing.ts";

const celsius = plainWriting("degC");
const fahrenheit = plainWriting("degF");
const ascii = { ...terminalWriting("degC", true), space: " " };

describe("a difference between two tests", () => {
  it("has its sign, and no offset of 32 in the other unit", () => {
    // 1 degC of difference is 1.8 degF by definition.
    expect(signedDifference(celsius, 1, 0.3)).toBe("+1.0 °C (+1.8 °F)");
    expect(signedDifference(celsius, -1, 0.3)).toBe("−1.0 °C (−1.8 °F)");
    expect(signedDifference(fahrenheit, -1, 0.3)).toBe("−1.8 °F (−1.0 °C)");
    expect(signedDifference(ascii, -1, 0.3)).toBe("-1.0 degC (-1.8 degF)");
  });

  it("has no sign where it is printed as nothing", () => {
    expect(signedDifference(celsius, 0.01, 0.3)).toBe("0.0 °C (0.0 °F)");
    expect(signedDifference(celsius, -0.01, 0.3)).toBe("0.0 °C (0.0 °F)");
  });

  it("shows hundredths only where the doubt is below a tenth of a degree", () => {
    expect(signedDifference(celsius, 0.123, 0.05)).toBe("+0.12 °C (+0.22 °F)");
    expect(signedDifference(celsius, 0.123, 0.1)).toBe("+0.1 °C (+0.2 °F)");
  });

  it("has limits in the same places", () => {
    expect(signedRange(celsius, { low: -0.5, high: 0.7 }, 0.3)).toBe(
      "−0.5 to +0.7 °C (−0.9 to +1.3 °F)",
    );
  });

  it("is told as a size where words say its direction", () => {
    expect(sizeOfDifference(celsius, -0.5, 0.3)).toBe("0.5 °C (0.9 °F)");
  });

  it("looks like none by what the person's own unit prints", () => {
    expect(looksLikeNone(0.049, 0.3)).toBe(true);
    expect(looksLikeNone(0.05, 0.3)).toBe(false);
  });
});
