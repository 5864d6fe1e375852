import { expect, it } from "vitest";
import type { Candidate, Change } from "../../../src/advice/advice-types.ts";
import type { SetUp } from "../../../src/kitchen/kitchen.ts";
import { actionText, untriedText } from "../../../src/report/wording/advice-actions.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const { kitchen, advice } = sampleKitchen();
const [, cooker] = advice.appliances;
const some = cooker!.cultures[0]!.best!;
const writing = plainWriting("degC");
const chance = { probability: 0.9, ceilingRisk: null, verdict: "unproven" } as const;

const step = (celsius: number, container = "jars-in-water"): SetUp => ({
  appliance: "step-cooker",
  setting: { kind: "step", celsius },
  container,
});
const to = (setUp: SetUp): Candidate => ({ ...some, setUp });
const act = (change: Change, best: SetUp, from: SetUp | null): string =>
  actionText(
    { change, from: from === null ? null : { setUp: from, chance } },
    to(best),
    kitchen,
    writing,
  );

const at = (appliance: string, setting: SetUp["setting"]): SetUp => ({
  appliance,
  setting,
  container: "basin",
});

it("says what to change, and from what", () => {
  expect(act("none", step(38), step(38))).toBe(
    "leave the adjustable cooker as it was tested, at 38 °C (100.4 °F), jars in water",
  );
  expect(act("setting", step(40), step(38))).toBe(
    "set the adjustable cooker to 40 °C (104 °F), jars in water as tested",
  );
  expect(act("container", step(38, "basin"), step(38))).toBe(
    "keep the adjustable cooker at 38 °C (100.4 °F), but change from jars in water to straight in the basin",
  );
  expect(act("setting and container", step(40, "basin"), step(38))).toBe(
    "set the adjustable cooker to 40 °C (104 °F) and change from jars in water to straight in the basin",
  );
  expect(act("first test", step(40), null)).toBe(
    "set the adjustable cooker to 40 °C (104 °F), jars in water",
  );
});

it("turns a dial, runs a program, and keeps what cannot be set", () => {
  expect(act("setting", at("box", { kind: "mark", mark: "4" }), step(38))).toContain(
    "turn the warming box to mark 4,",
  );
  expect(act("setting", at("box", { kind: "program", program: "Slow" }), step(38))).toContain(
    "run the warming box on program Slow,",
  );
  expect(act("container", at("cupboard", { kind: "fixed" }), step(38))).toContain(
    "keep the cupboard over the stove as it is, but change from",
  );
});

it("leaves the one set-up that was tested, and uses one of several", () => {
  const words = { change: "none", from: null } as const;
  expect(actionText(words, to(step(38)), kitchen, writing, cooker!.tests)).toMatch(/^use /);
  expect(actionText(words, to(step(38)), kitchen, writing, cooker!.tests.slice(0, 1))).toMatch(
    /^leave /,
  );
});

it("names the part that no test has tried", () => {
  expect(untriedText(to(step(39)), cooker!)).toBe("that setting was not tested");
  expect(untriedText(to(step(38, "basin")), cooker!)).toBe("the two were not tested together");
  expect(untriedText(to(step(38, "jars-on-rack")), cooker!)).toBe(
    "it was not tested with that container",
  );
  expect(untriedText(to(step(39, "jars-on-rack")), cooker!)).toBe(
    "neither that setting nor that container was tested",
  );
  expect(untriedText(to(step(39)), { tests: [] })).toBe("all of that is assumed");
});
