import { describe, expect, it } from "vitest";
import {
  applianceList,
  containerList,
  controlText,
} from "../../../src/cli/kitchen/kitchen-lists.ts";
import type { Kitchen } from "../../../src/kitchen/kitchen.ts";

const kitchen: Kitchen = {
  shownUnit: "degC",
  altitude: null,
  room: null,
  thermometers: [],
  appliances: [
    {
      id: "box",
      name: "Warming box",
      kind: "warming box",
      control: { kind: "marks", marks: ["1", "2"] },
      thermostat: null,
      movedOn: null,
    },
    {
      id: "pot",
      name: "pot",
      kind: "cooker",
      control: { kind: "fixed" },
      thermostat: true,
      movedOn: null,
    },
  ],
  containers: [
    {
      id: "jars",
      name: "Six jars",
      stands: "jars in water",
      volume: 0.5,
      count: 6,
      changedOn: null,
    },
    { id: "basin", name: "Basin", stands: "basin", volume: null, count: null, changedOn: null },
  ],
  cultures: [],
  tests: [
    {
      id: "night",
      appliance: "box",
      setting: { kind: "mark", mark: "1" },
      container: "jars",
      fill: null,
      room: null,
      notes: null,
      files: [],
    },
  ],
  batches: [],
};
const page = { width: 80, ascii: false };

describe("lists of the kitchen", () => {
  it("tell appliances, how they are set and how often they were tested", () => {
    expect(applianceList(kitchen, page)).toEqual([
      "box  1 test   warming box; marks 1, 2; thermostat not known",
      "pot  0 tests  cooker; nothing to set; with thermostat",
    ]);
  });

  it("tell containers", () => {
    expect(containerList(kitchen, page)).toEqual([
      "jars   1 test   Six jars; jars in water; 6 of 0.5 L",
      "basin  0 tests  basin",
    ]);
  });

  it("show steps in the person's unit: 30 degC is 86 degF, a step of 0.5 degC is 0.9 degF", () => {
    const control = { kind: "steps", low: 30, high: 45, step: 0.5 } as const;
    expect(controlText(control, "degC")).toBe("30 to 45 degC in steps of 0.5");
    expect(controlText(control, "degF")).toBe("86 to 113 degF in steps of 0.9");
  });
});
