import { expect, it } from "vitest";
import { thermometerContract, thermometerText } from "../../src/report/thermometer-terminal.ts";
import type { ThermometerFindings } from "../../src/report/thermometer-terminal.ts";
import { expectGolden } from "./golden.ts";
import { hostileNames } from "./sample-analysis.ts";
import { sampleThermometers } from "./sample-kitchen.ts";

const findings: ThermometerFindings = {
  analysis: sampleThermometers.pen,
  boiling: [
    {
      check: 1,
      point: { celsius: 95.21, standardUncertainty: 0.23, pressure: 850.7, how: "altitude" },
    },
  ],
  windows: [
    {
      name: "Low long-hold milk culture",
      low: 36.5,
      high: 39.5,
      fitness: { word: "usable", expanded: 0.41, shareTaken: 0.27 },
    },
  ],
  shownUnit: "degC",
  stored: "kitchen.yaml",
};
const plain = { colour: false, ascii: false, width: 80 };

it("writes a thermometer's findings as kept", () => {
  expectGolden("thermometer.txt", thermometerText(findings, plain));
});

it("gives the correction at each reading, the person's unit first", () => {
  const text = thermometerText({ ...findings, shownUnit: "degF" }, plain);
  expect(text).toMatch(/at 68 °F \(20 °C\) +−0\.49 ± 0\.47 °F \(−0\.27 ± 0\.26 °C\)/);
  expect(text.match(/^ {4}at /gm)!.length).toBe(4);
});

it("says once where water boils, however many checks were made there", () => {
  const boiling = [findings.boiling[0]!, { ...findings.boiling[0]!, check: 2 }];
  const text = thermometerText({ ...findings, boiling }, plain);
  expect(text.match(/^ {2}Boiling /gm)!.length).toBe(1);
});

it("is short where there is little to say", () => {
  const text = thermometerText(
    {
      ...findings,
      analysis: sampleThermometers.bathLogger,
      boiling: [],
      windows: [],
      stored: null,
    },
    plain,
  );
  expect(text).not.toMatch(/Boiling|Check |Enough|Stored/);
  expect(text).toContain("at any reading");
  expect(text).toContain("Not checked yet");
});

it.each([40, 60, 80])("keeps to %d columns and to ASCII where asked", (width) => {
  const [first] = hostileNames;
  const thermometer = { ...findings.analysis.thermometer, name: `${first} ${hostileNames[2]}` };
  const analysis = { ...findings.analysis, thermometer };
  const text = thermometerText({ ...findings, analysis }, { ...plain, ascii: true, width });
  expect(text).toMatch(/^[\u0020-\u007e\n]+$/);
  for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(width);
});

it("gives the same as plain data, infinite degrees of freedom as null", () => {
  const contract = thermometerContract(findings, "0.1.0");
  expect(contract.kind).toBe("thermometer");
  expect(contract.corrections.map(({ reading }) => reading)).toEqual([20, 38, 43, 90]);
  expect(contract.questions[0]!.text).toContain("left out of the correction");
  expect(contract.windows[0]).toMatchObject({ word: "usable", shareTaken: 0.27 });
  expect(contract.boiling[0]).toMatchObject({ check: 1, pressure: 850.7 });
  const [one] = findings.analysis.corrections;
  const endless = { ...one!, degreesOfFreedom: Infinity };
  const analysis = { ...findings.analysis, corrections: [endless] };
  const [window] = findings.windows;
  const windows = [{ ...window!, fitness: { ...window!.fitness, shareTaken: Infinity } }];
  const found = thermometerContract({ ...findings, analysis, windows }, "0.1.0");
  expect(found.corrections[0]!.degreesOfFreedom).toBeNull();
  expect(found.windows[0]!.shareTaken).toBeNull();
});
