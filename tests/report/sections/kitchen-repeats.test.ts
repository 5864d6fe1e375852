import { expect, it } from "vitest";
import { celsiusDifference } from "../../../src/quantity.ts";
import { kitchenRepeats, runToRunText } from "../../../src/report/sections/kitchen-repeats.ts";
import { markupWriting, plainWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { sampleKitchen, untestedKitchen } from "../sample-kitchen.ts";

it("says whether the run-to-run figure was measured, stated or assumed", () => {
  const value = celsiusDifference(0.2);
  const writing = plainWriting("degC");
  expect(runToRunText({ value, from: "assumed" }, writing)).toBe("0.20 °C (0.36 °F), assumed");
  expect(runToRunText({ value, from: "stated" }, writing)).toBe("0.20 °C (0.36 °F), as you said");
  expect(runToRunText({ value, from: "measured", repeats: 1 }, writing)).toBe(
    "0.20 °C (0.36 °F), with 1 repeat on this appliance",
  );
});

it("sets the averages of a repeated set-up's tests below each other, with their days", () => {
  const page = { analysis: sampleKitchen(), writing: markupWriting("degC") };
  const text = visibleText(kitchenRepeats(page)!.html);
  expect(text).toMatch(/38\.2 ± 0\.4 °C \(100\.8 ± 0\.6 °F\) 2026-03-04 38\.4 ± 0\.4/);
  expect(kitchenRepeats({ ...page, analysis: untestedKitchen() })).toBeNull();
});
