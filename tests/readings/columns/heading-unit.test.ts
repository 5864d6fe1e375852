import { describe, expect, it } from "vitest";
import { headingUnit, withoutUnit } from "../../../src/readings/columns/heading-unit.ts";

describe("headingUnit and withoutUnit", () => {
  it.each([
    ["Temp (°C)", "degC", "Temp"],
    ["T1 [degF]", "degF", "T1"],
    ["Temperature °F", "degF", "Temperature"],
    ["temp_c", "degC", "temp"],
    ["Temp. / C", "degC", "Temp."],
    ["TempF", "degF", "Temp"],
    ["temp C", "degC", "temp"],
    ["Temp, °C", "degC", "Temp"],
    ["Jar 2 (deg C)", "degC", "Jar 2"],
    ["Temperature (Celsius)", "degC", "Temperature"],
    ["Temp (\uFFFDC)", "degC", "Temp"],
    ["Bath ℃", "degC", "Bath"],
    ["Temperature[F]", "degF", "Temperature"],
    ["°C", "degC", ""],
    ["Time", null, "Time"],
    ["Jar C2", null, "Jar C2"],
    ["Probe-C", null, "Probe-C"],
    ["Current", null, "Current"],
    ["Humidity (%)", null, "Humidity (%)"],
  ] as const)("%s: %s, %s", (heading, unit, bare) => {
    expect(headingUnit(heading)).toBe(unit);
    expect(withoutUnit(heading)).toBe(bare);
  });
});
