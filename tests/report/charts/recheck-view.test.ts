import { describe, expect, it } from "vitest";
import { celsius } from "../../../src/quantity.ts";
import { nearWindows, recheckDomain } from "../../../src/report/charts/recheck-view.ts";
import type { RecheckInput } from "../../../src/report/charts/recheck-view.ts";
import { kitchenRequirements } from "../sample-kitchen.ts";
import { chartOf, notMoved } from "../sample-recheck.ts";

const input: RecheckInput = {
  chart: notMoved.chart,
  days: ["2026-03-04", "2026-03-09"],
  requirements: kitchenRequirements,
  unit: "degC",
};

describe("the stretch of temperature of a chart of tests", () => {
  it("holds every test, both limits, and window edges that are near", () => {
    // Limits 37.6 and 38.8 degC; edges within a degree of them: 38, and twice 39.5.
    const { low, high } = recheckDomain(input);
    expect(low).toBeLessThan(37.6);
    expect(low).toBeGreaterThan(36.5);
    expect(high).toBeGreaterThan(39.5);
    expect(high).toBeLessThan(40);
  });

  it("holds a test far beyond the limits", () => {
    const chart = chartOf([
      ["a", 38.2],
      ["b", 44],
    ]);
    expect(recheckDomain({ ...input, chart }).high).toBeGreaterThan(44);
  });

  it("is in the drawn unit", () => {
    const shown = recheckDomain(input);
    const fahrenheit = recheckDomain({ ...input, unit: "degF" });
    expect(fahrenheit.low).toBeGreaterThan(95);
    // The least air is the same number in both units, so it is a little less of a stretch in degF.
    expect((fahrenheit.high - fahrenheit.low) / 1.8).toBeCloseTo(shown.high - shown.low, 0);
  });

  it("has only windows that reach into it, or nearly so", () => {
    const far = { ...kitchenRequirements[0]!, culture: "far", low: celsius(24), high: celsius(27) };
    const near = nearWindows({ ...input, requirements: [...kitchenRequirements, far] });
    expect(near.map(({ culture }) => culture)).toEqual(["reuteri", "warm-blend", "yoghurt"]);
  });
});
