import { describe, expect, it } from "vitest";
import { combinedUncertainty, uncertaintyBudget } from "../../src/culture/uncertainty-budget.ts";
import type { UncertaintyComponent } from "../../src/culture/verdict-types.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { evidenceOf } from "./nights.ts";

describe("combinedUncertainty", () => {
  it("is the root sum of squares, as in DKD-R 5-7's climatic chamber", () => {
    // Components 1.039230, 0.692820, 0.254034, 0.288675 combine to 1.306854 (arithmetic, 1e-6).
    const parts = [1.03923, 0.69282, 0.254034, 0.288675].map((value): UncertaintyComponent => ({
      source: "thermometer",
      standardUncertainty: celsiusDifference(value),
      from: "stated",
    }));
    expect(Math.abs(combinedUncertainty(parts) - 1.306854)).toBeLessThan(1e-6);
  });
});

describe("uncertaintyBudget", () => {
  const evidence = evidenceOf({ hoursHeld: 8, hold: () => 40 });

  it("lists every component once, with where it comes from", () => {
    const parts = uncertaintyBudget(evidence, evidence.night.hold!, 0.2);
    expect(parts.map(({ source, from }) => [source, from])).toEqual([
      ["thermometer", "stated"],
      ["resolution", "measured"],
      ["mean of the hold", "measured"],
      ["run to run", "stated"],
      ["hours not tested", "assumed"],
    ]);
  });

  it("leaves the hours not tested out where there are none", () => {
    const sources = uncertaintyBudget(evidence, evidence.night.hold!).map(({ source }) => source);
    expect(sources).not.toContain("hours not tested");
  });
});
