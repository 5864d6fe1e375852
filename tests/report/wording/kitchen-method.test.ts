import { expect, it } from "vitest";
import { kitchenMethodSteps } from "../../../src/report/wording/kitchen-method.ts";
import { methodSteps } from "../../../src/report/wording/method.ts";

it("tells of thermometers in the plural, and keeps every other step of a single test", () => {
  const titles = kitchenMethodSteps.map(({ title }) => title);
  expect(titles).not.toContain("Thermometer");
  for (const { title } of methodSteps) {
    if (title !== "Thermometer") expect(titles).toContain(title);
  }
  expect(new Set(titles).size).toBe(titles.length);
});

it("names the works its thermometry stands on", () => {
  const all = kitchenMethodSteps.map(({ text }) => text).join(" ");
  for (const work of ["H.3", "IAPWS-IF97", "US Standard Atmosphere 1976", "JCGM 106:2012"]) {
    expect(all).toContain(work);
  }
});
