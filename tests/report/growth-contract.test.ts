import { describe, expect, it } from "vitest";
import { growthOverHold } from "../../src/culture/growth-over-hold.ts";
import { coagulans, thermophilus } from "../../src/culture/organisms.ts";
import { toContract } from "../../src/report/contract.ts";
import { growthEntry } from "../../src/report/growth-contract.ts";
import { holdsNight } from "./sample-analysis.ts";
import { grownNight } from "./sample-growth.ts";

describe("growthEntry", () => {
  it("hands on the model's figures, to six decimals, and the limits with their sources", () => {
    const night = grownNight();
    const { series, phases } = night.probes[0]!;
    const { minutes, celsius } = series;
    const byHand = growthOverHold({ minutes, celsius, phases }, thermophilus)!;
    const { growth } = toContract(night).probes[0]!;
    expect(growth.map(({ culture }) => culture)).toEqual(["yoghurt", "warm-blend"]);
    const [first] = growth[0]!.organisms;
    expect(first!.organism).toBe("Streptococcus thermophilus");
    for (const key of ["meanRate", "equivalentHours", "equivalentHoursInAll"] as const) {
      expect(first![key]).toBe(Number(byHand[key].toFixed(6)));
    }
    expect(first!.lostToWarmUp).toBe(Number(byHand.lostToWarmUp!.toFixed(6)));
    expect(first!.lostToDisturbances).toBe(Number(byHand.lostToDisturbances!.toFixed(6)));
    // The organism's limits as tests/culture/organisms.test.ts has them.
    expect(first!.limits.optimum).toEqual({ celsius: 40, source: thermophilus.optimum!.source });
  });

  it("names the organisms that have no figures", () => {
    const blend = grownNight().probes[0]!.growth![1]!;
    expect(growthEntry(blend)).toMatchObject({
      culture: "warm-blend",
      organisms: [{ organism: coagulans.organism }],
      notModelled: [{ organism: "Limosilactobacillus reuteri", because: "limit not known" }],
    });
  });

  it("is an empty list where nothing was reckoned", () => {
    expect(toContract(holdsNight()).probes[0]!.growth).toEqual([]);
  });
});
