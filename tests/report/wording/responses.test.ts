import { expect, it } from "vitest";
import type { ResponseTerm } from "../../../src/advice/response-types.ts";
import {
  responseDescription,
  termFigure,
  termName,
} from "../../../src/report/wording/responses.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const analysis = sampleKitchen();
const writing = plainWriting("degC");
const pair = { mean: 0.5, standardDeviation: 0.2 };
const row = (term: ResponseTerm["term"], mean = 0.5, standardDeviation = 0.2) => {
  const whole = { term, prior: { mean, standardDeviation }, now: pair };
  return [termName(whole, analysis.kitchen, writing), termFigure(whole, whole.prior, writing)];
};

it("tells each term in its own unit, rounded with its standard deviation", () => {
  expect(row({ code: "level", at: 40, setting: null }, 40, 2)).toEqual([
    "Hold at 40 °C (104 °F), the room as usual",
    "40.0 ± 2.0 °C (104.0 ± 3.6 °F)",
  ]);
  expect(row({ code: "level", at: null, setting: { kind: "mark", mark: "2" } })[0]).toBe(
    "Hold at mark 2, the room as usual",
  );
  expect(row({ code: "level", at: null, setting: { kind: "fixed" } })[0]).toBe(
    "Hold, the room as usual",
  );
  expect(row({ code: "slope", per: "degree" }, 1, 0.1)).toEqual([
    "Change for each degree set",
    "1.00 ± 0.10",
  ]);
  expect(row({ code: "slope", per: "mark" }, 3, 1.5)).toEqual([
    "Change from one mark to the next",
    "3.0 ± 1.5 °C (5.4 ± 2.7 °F)",
  ]);
  expect(row({ code: "mark", setting: { kind: "mark", mark: "2" } }, 0, 0.5)).toEqual([
    "How much more, or less, than an even step up to mark 2",
    "0.0 ± 0.5 °C (0.0 ± 0.9 °F)",
  ]);
  expect(row({ code: "room" })).toEqual(["Change for each degree of the room", "0.50 ± 0.20"]);
  expect(row({ code: "share-lost", container: "basin" }, 0.03, 0.02)).toEqual([
    "Share lost to the room, Straight in the basin",
    "3.0 ± 2.0 %",
  ]);
});

it("stands for the chart: each container's ends, the windows, how many tests", () => {
  const [fixed, steps] = analysis.advice.appliances;
  expect(responseDescription(fixed!, analysis, writing)).toMatch(
    /: Jars in water 41\.3 °C \(106\.3 °F\); .* 1 tested point\.$/,
  );
  const text = responseDescription(steps!, analysis, writing);
  expect(text).toContain("Jars in water from 30.5 °C");
  expect(text).toContain("Windows: Low long-hold milk culture 36.5 to 39.5 °C");
  expect(text).toContain("3 tested points.");
});
