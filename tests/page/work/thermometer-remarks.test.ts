import { expect, it } from "vitest";
import { thermometerRemarks } from "../../../src/page/work/thermometer-remarks.ts";
import { checkedPen, kitchenOf, uncheckedPen } from "../../kitchen-analysis/small-kitchen.ts";

const kitchen = kitchenOf([], { thermometers: [checkedPen, uncheckedPen] });

it("says what to add, from a check 0.3 degC too high by construction", () => {
  const [known, add] = thermometerRemarks(kitchen, "pen", "2026-06-01");
  expect(known).toBe(
    "Pen thermometer: Checked against a reference thermometer on 2026-02-14; last check 3 months ago.",
  );
  expect(add).toMatch(/at 38 °C \(100\.4 °F\) −0\.3\d? ± /);
});

it("says that nothing is known without a check, and nothing of a stranger", () => {
  expect(thermometerRemarks(kitchen, "spare", "2026-06-01")[0]).toMatch(/Not checked yet/);
  expect(thermometerRemarks(kitchen, "stick", "2026-06-01")).toEqual([]);
});
