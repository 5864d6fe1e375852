import { describe, expect, it } from "vitest";
import {
  applianceOptions,
  enteredAppliance,
  enteredBatch,
  enteredPlain,
  enteredThermometer,
} from "../../../../src/page/screen/kitchen/entry-form.ts";

describe("enteredAppliance", () => {
  it("parts a range of settings from its step", () => {
    const entry = { kind: "cooker", steps: "30..45 by 0.5", thermostat: "yes" };
    expect(enteredAppliance(entry)).toEqual({
      kind: "cooker",
      control: "steps",
      steps: "30..45",
      step: "0.5",
      thermostat: "yes",
    });
  });

  it("knows programs, marks and what cannot be set", () => {
    expect(enteredAppliance({ marks: ["low", 1, 2] })).toMatchObject({
      control: "marks",
      marks: "low, 1, 2",
    });
    expect(enteredAppliance({ programs: ["warm"] })).toMatchObject({ control: "programs" });
    expect(enteredAppliance({ control: "fixed" })).toMatchObject({ control: "fixed" });
  });
});

describe("applianceOptions", () => {
  it("names the kind of control only where there is nothing else to say of it", () => {
    expect(applianceOptions({ control: ["fixed"], kind: ["cooker"] })).toEqual({
      control: ["fixed"],
      kind: ["cooker"],
    });
    expect(applianceOptions({ control: ["steps"], steps: ["30..45"] })).toEqual({
      steps: ["30..45"],
    });
  });
});

describe("other entries", () => {
  it("are words as one would type them", () => {
    expect(enteredPlain({ volume: "0.5 L", count: 6, notes: null })).toEqual({
      volume: "0.5 L",
      count: "6",
      notes: "",
    });
  });

  it("leave a thermometer's checks to be added to", () => {
    expect(enteredThermometer({ accuracy: 0.5, checks: [{ ice: [0.3] }] })).toEqual({
      accuracy: "0.5",
    });
  });

  it("turn a batch's yes and no into words, its troubles into ticks", () => {
    expect(enteredBatch({ heated: true, moved: false, trouble: ["pink"] })).toEqual({
      heated: "yes",
      moved: "no",
      trouble: ["pink"],
    });
    expect(enteredBatch({ culture: "reuteri" })).toMatchObject({ trouble: [] });
  });
});
