import { expect, it } from "vitest";
import { kitchenThermometers } from "../../../src/report/sections/kitchen-thermometers.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { sampleKitchen, untestedKitchen } from "../sample-kitchen.ts";

const writing = markupWriting("degC");
const text = visibleText(kitchenThermometers({ analysis: sampleKitchen(), writing })!.html);

it("tells of each how it is known, what to add at four readings, and where it was used", () => {
  expect(text).toContain("Where it shows 38 °C (100.4 °F) +0.12 ± 0.14 °C (+0.21 ± 0.25 °F)");
  // Two at four readings each; the third's is the same everywhere.
  expect(text.match(/Where it shows/g)!.length).toBe(8);
  expect(text).toContain("Whatever it shows 0.0 ± 0.6 °C (0.0 ± 1.1 °F)");
  expect(text).toContain("Not checked yet: known only by its specification, ±0.5 °C (±0.9 °F).");
  expect(text).toMatch(/Used in the test of \d{4}-\d\d-\d\d ?\./);
  expect(text).toContain("its scale where no check reaches 0.15 °C (0.27 °F), assumed");
});

it("asks about a doubtful check before it gives the correction", () => {
  expect(text.indexOf("Look at this check again.")).toBeGreaterThan(
    text.indexOf("Pen thermometer"),
  );
  expect(text.indexOf("Look at this check again.")).toBeLessThan(text.indexOf("Where it shows"));
});

it("is not there without thermometers", () => {
  expect(kitchenThermometers({ analysis: untestedKitchen(), writing })).toBeNull();
});
