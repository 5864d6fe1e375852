import { describe, expect, it } from "vitest";
import {
  isKelvin,
  isKelvinLike,
  mayMeanKelvin,
  withoutKelvin,
} from "../../../src/readings/columns/kelvin.ts";
import { problemOf, read, rounded } from "../reading-helpers.ts";

describe("kelvin", () => {
  it.each(["Temp (K)", "T1 [K]", "Temperature_K", "T/K", "kelvin", "K"])("%s may mean it", (text) =>
    expect(mayMeanKelvin(text)).toBe(true),
  );
  it.each(["Tank", "Temp K1", "Kitchen", "CH K", "Type K thermocouple"])("%s does not", (text) =>
    expect(mayMeanKelvin(text)).toBe(false),
  );
  it("asks the values: a thermocouple of type K shows degC", () => {
    expect(isKelvin("TC (K)", 311.5)).toBe(true);
    expect(isKelvin("TC (K)", 38.4)).toBe(false);
    expect(isKelvinLike(233)).toBe(false);
  });
  it("leaves the name", () => {
    expect(withoutKelvin("Jar 2 (K)")).toBe("Jar 2");
    expect(withoutKelvin("Temp_K")).toBe("Temp");
  });
});

// 273.15 K is 0 degC by definition (SI brochure, 9th edition, 2.3.1).
describe("a file in kelvin", () => {
  it.each([
    ["heading", "time,Temp (K)\n22:00,273.15\n22:30,311.15\n23:00,314.65\n"],
    ["units line", "time;Temp\n;K\n22:00;273,15\n22:30;311,15\n23:00;314,65\n"],
    ["cells", "time,Temp\n22:00,273.15 K\n22:30,311.15 K\n23:00,314.65 K\n"],
    ["column", "time,temp,unit\n22:00,273.15,K\n22:30,311.15,K\n23:00,314.65,K\n"],
  ])("with its unit in the %s", async (_, text) => {
    const file = await read(text);
    expect(file.unit).toBe("K");
    expect(rounded(file.probes[0]!.celsius)).toEqual([0, 38, 41.5]);
  });
  it("without a unit is asked about", async () => {
    const problem = await problemOf("time,temp\n22:00,300.1\n22:30,311.1\n23:00,311.2\n");
    expect(problem).toMatchObject({ code: "unit-undecidable", facts: { middle: 311.1 } });
  });
  it("contradicts --unit C", async () => {
    const text = "time,Temp (K)\n22:00,273.15\n22:30,311.15\n23:00,314.65\n";
    expect(await problemOf(text, { unit: "degC" })).toMatchObject({ code: "options-contradict" });
  });
});
