import { expect, it } from "vitest";
import {
  atSetting,
  theSetUp,
  withinTheAppliance,
} from "../../../src/report/wording/set-up-phrases.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const { kitchen } = sampleKitchen();
const writing = plainWriting("degC");

it("gives each kind of setting its preposition, and none where nothing can be set", () => {
  expect(atSetting({ kind: "step", celsius: 38 }, writing)).toBe("at 38 °C (100.4 °F)");
  expect(atSetting({ kind: "mark", mark: "3" }, writing)).toBe("at mark 3");
  expect(atSetting({ kind: "program", program: "Warm" }, writing)).toBe("on program Warm");
  expect(atSetting({ kind: "fixed" }, writing)).toBeNull();
});

it("names a set-up as a sentence does", () => {
  const box = { appliance: "box", setting: { kind: "mark", mark: "3" }, container: "jars-on-rack" };
  expect(theSetUp(kitchen, box as never, writing)).toBe(
    "the warming box at mark 3, jars on the rack",
  );
  const fixed = { appliance: "cupboard", setting: { kind: "fixed" }, container: "basin" } as const;
  expect(theSetUp(kitchen, fixed, writing)).toBe(
    "the cupboard over the stove, straight in the basin",
  );
  expect(withinTheAppliance(kitchen, fixed, writing)).toBe("straight in the basin");
});
