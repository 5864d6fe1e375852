import { describe, expect, it } from "vitest";
import { celsiusDifference } from "../../src/quantity.ts";
import {
  assumedThermometer,
  correctedThermometer,
  specifiedThermometer,
  type ThermometerStatement,
} from "../../src/thermometer/budget.ts";
import { constantCorrection } from "../../src/thermometer/constant-correction.ts";
import { statementAt } from "../../src/thermometer/correction-at.ts";

const sourceOf = (statement: ThermometerStatement) =>
  constantCorrection(statement).components.map((one) => one.source);

describe("constantCorrection", () => {
  it.each([
    ["an assumption", assumedThermometer],
    ["a specification", specifiedThermometer(celsiusDifference(0.3), "stated")],
    ["a correction", correctedThermometer(celsiusDifference(-0.4), celsiusDifference(0.08))],
  ])("says of every reading what was stated: %s", (_, statement) => {
    for (const reading of [-10, 0, 38.4, 100])
      expect(statementAt(constantCorrection(statement), reading)).toEqual(statement);
  });

  it("names the one source of doubt", () => {
    expect(sourceOf(assumedThermometer)).toEqual(["specification"]);
    expect(sourceOf(correctedThermometer(celsiusDifference(0), celsiusDifference(0)))).toEqual([
      "statement",
    ]);
  });
});
