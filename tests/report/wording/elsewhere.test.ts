import { expect, it } from "vitest";
import { elsewhereText } from "../../../src/report/wording/elsewhere.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const analysis = sampleKitchen();
const writing = plainWriting("degC");
const [warmCooker] = analysis.advice.appliances;
const [advice] = warmCooker!.cultures;

it("says of the other appliance what its own advice says, and whether it was tested so", () => {
  expect(elsewhereText({ analysis, advice: advice!, writing })).toBe(
    "the adjustable cooker can (96 %)",
  );
  const elsewhere = { ...advice!.elsewhere!, appliance: "box", basis: "extrapolated" } as const;
  expect(
    elsewhereText({
      analysis,
      advice: { ...advice!, elsewhere: { ...elsewhere, probability: 0.6 } },
      writing,
    }),
  ).toBe("the warming box may (60 %, predicted)");
});

it("says nothing where there is none", () => {
  expect(elsewhereText({ analysis, advice: { ...advice!, elsewhere: null }, writing })).toBeNull();
});
