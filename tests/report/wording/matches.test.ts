import { expect, it } from "vitest";
import { matchPlaceText } from "../../../src/report/wording/matches.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const analysis = sampleKitchen();
const [first] = analysis.advice.match.places;
const writing = plainWriting("degC");

it("names set-up, probability and what that rests on", () => {
  expect(matchPlaceText(analysis, first!, writing)).toBe(
    "Adjustable cooker, 38 °C (100.4 °F), Jars in water, 96 % likely to hold (tested).",
  );
});

it("says why there is no place, and what comes nearest", () => {
  const none = { ...first!, placed: null };
  expect(matchPlaceText(analysis, { ...none, why: "none-left" }, writing)).toBe(
    "No place: the appliances that could hold it are taken; by itself it could go into Adjustable cooker, 38 °C (100.4 °F), Jars in water, 96 % likely to hold.",
  );
  expect(matchPlaceText(analysis, { ...none, why: "none-can" }, writing)).toContain(
    "no appliance here is likely enough to hold it; likeliest is Adjustable cooker",
  );
  expect(matchPlaceText(analysis, { ...none, why: "nothing-known", alone: null }, writing)).toBe(
    "No place: nothing is known yet of any appliance for it.",
  );
});
