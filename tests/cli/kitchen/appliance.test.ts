import { describe, expect, it } from "vitest";
import { contractOf, listing } from "../run-holdband.ts";
import { cookerNight, emptyKitchen, equippedKitchen } from "./run-kitchen.ts";

describe("appliance", () => {
  it("enters one of each control", () => {
    const { ok, kitchen } = emptyKitchen();
    ok("appliance", "pot", "--kind", "cooker", "--control", "fixed");
    ok(
      "appliance",
      "multi",
      "--kind",
      "Cooker",
      "--programs",
      "Warm, Yoghurt",
      "--name",
      "Two programs",
    );
    ok(
      "appliance",
      "bath",
      "--kind",
      "water bath",
      "--steps",
      "86..113F",
      "--step",
      "1",
      "--thermostat",
      "yes",
    );
    ok(
      "appliance",
      "box",
      "--kind",
      "warming box",
      "--marks",
      "low,1,2,high",
      "--thermostat",
      "no",
    );
    const [pot, multi, bath, box] = kitchen().appliances;
    expect(pot).toMatchObject({ kind: "cooker", control: { kind: "fixed" }, thermostat: null });
    expect(multi).toMatchObject({
      name: "Two programs",
      control: { kind: "programs", programs: ["Warm", "Yoghurt"] },
    });
    // 86 and 113 degF are 30 and 45 degC; a step of 1 degF is 5/9 degC.
    expect(bath).toMatchObject({ control: { kind: "steps", low: 30, high: 45 }, thermostat: true });
    expect(box).toMatchObject({
      control: { kind: "marks", marks: ["low", "1", "2", "high"] },
      thermostat: false,
    });
  });

  it("lists them, shows one, and keeps the comments of the file", () => {
    const { ok, text } = equippedKitchen();
    expect(ok("appliance")).toMatch(/^step-cooker .*\nbath .*\n.*not known\nwarm-cooker .*\nbox /);
    expect(ok("appliance", "box")).toMatch(/^box +0 tests +warming box; marks low, 2, high/);
    ok("appliance", "pot", "--kind", "cooker", "--control", "fixed");
    expect(text()).toContain("# The kitchen of these tests.");
    expect(emptyKitchen().ok("appliance")).toContain("no appliances in this kitchen yet");
  });

  it("changes only what was said, and says nothing twice", () => {
    const { ok, kitchen, folder } = equippedKitchen();
    expect(ok("appliance", "box", "--thermostat", "yes")).toContain("Changed");
    const box = kitchen().appliances.find(({ id }) => id === "box");
    expect(box).toMatchObject({
      kind: "warming box",
      control: { kind: "marks" },
      thermostat: true,
    });
    const before = listing(folder);
    ok("appliance", "box", "--thermostat", "yes");
    expect(listing(folder)).toEqual(before);
    ok("appliance", "box", "--control", "fixed");
    expect(kitchen().appliances.find(({ id }) => id === "box")?.control.kind).toBe("fixed");
  });

  it("does not take a setting away that a test was made at", () => {
    const { ok, run, folder } = equippedKitchen();
    ok("add", cookerNight, "--appliance", "step-cooker", "--setting", "38", "--container", "jars");
    const before = listing(folder);
    const refused = run("appliance", "step-cooker", "--steps", "40..60", "--json");
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toContain("step-cooker-38-jars");
    expect(listing(folder)).toEqual(before);
  });

  it.each([
    [["pot"], "not-in-kitchen", 'called "pot"'],
    [["bax"], "not-in-kitchen", 'Did you mean "box"?'],
    [["pot", "--control", "fixed"], "option-missing", "--kind"],
    [["pot", "--kind", "cooker"], "option-missing", "--control fixed, --programs"],
    [["pot", "--kind", "kettle"], "option-invalid", "warming box"],
    [["--kind", "cooker"], "option-missing", "name"],
    [
      ["pot", "--kind", "cooker", "--steps", "30..45", "--marks", "1,2"],
      "options-contradict",
      "--steps and --marks",
    ],
    [["pot", "--kind", "cooker", "--control", "dial"], "option-invalid", "--control expects fixed"],
    [["pot", "--kind", "cooker", "--steps", "30..45.3"], "option-invalid", "whole number of steps"],
    [["pot", "--kind", "cooker", "--step", "0.5"], "option-missing", "--steps"],
    [["pot", "--kind", "cooker", "--marks", "1,,2"], "option-invalid", "--marks expects"],
    [["pot", "--kind", "cooker", "--marks", "1,1"], "kitchen-change-refused", '"1" twice'],
    [
      ["pot", "--kind", "cooker", "--control", "fixed", "--thermostat", "maybe"],
      "option-invalid",
      "yes, no or unknown",
    ],
    [["a\nb", "--kind", "cooker", "--control", "fixed"], "kitchen-change-refused", "name"],
  ])("refuses %j and leaves the file as it is", (words, code, says) => {
    const { run, folder } = equippedKitchen();
    const before = listing(folder);
    const refused = run("appliance", ...words, "--json");
    expect(refused.exitCode).toBe(2);
    expect(refused.err).toContain(says);
    expect(contractOf(refused).problem?.code).toBe(code);
    expect(listing(folder)).toEqual(before);
  });
});
