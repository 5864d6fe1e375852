import { expect, it } from "vitest";
import {
  applianceName,
  containerName,
  fullSetUpText,
  settingText,
  setUpText,
} from "../../../src/report/wording/set-ups.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const { kitchen } = sampleKitchen();
const writing = plainWriting("degC");
const jars = { appliance: "step-cooker", container: "jars-in-water" };

it("says a setting as it stands on the appliance, temperatures in both units", () => {
  expect(settingText({ kind: "fixed" }, writing)).toBeNull();
  expect(settingText({ kind: "step", celsius: 38 }, writing)).toBe("38 °C (100.4 °F)");
  expect(settingText({ kind: "step", celsius: 38 }, plainWriting("degF"))).toBe("100.4 °F (38 °C)");
  expect(settingText({ kind: "program", program: "Warm" }, writing)).toBe("program Warm");
  expect(settingText({ kind: "mark", mark: "3" }, writing)).toBe("mark 3");
});

it("names set-ups with their appliance and without", () => {
  const setUp = { ...jars, setting: { kind: "mark", mark: "3" } } as const;
  expect(setUpText(kitchen, setUp, writing)).toBe("Mark 3, Jars in water");
  expect(fullSetUpText(kitchen, setUp, writing)).toBe("Adjustable cooker, mark 3, Jars in water");
  const fixed = { ...jars, setting: { kind: "fixed" } } as const;
  expect(setUpText(kitchen, fixed, writing)).toBe("Jars in water");
  expect(fullSetUpText(kitchen, fixed, writing)).toBe("Adjustable cooker, Jars in water");
});

it("falls back to the id of what the kitchen does not know", () => {
  expect(applianceName(kitchen, { appliance: "stove" })).toBe("stove");
  expect(containerName(kitchen, { container: "pot" })).toBe("pot");
});
