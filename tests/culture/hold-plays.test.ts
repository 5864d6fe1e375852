import { describe, expect, it } from "vitest";
import { heldEvidence, holdPlays, scenarioEvidence } from "../../src/culture/hold-plays.ts";
import { requirementProbability } from "../../src/culture/probability.ts";
import { strengthLikelihoods } from "../../src/culture/scenarios.ts";
import { asked, evidenceOf, swinging } from "./nights.ts";

const steady = (hoursHeld: number) =>
  heldEvidence(evidenceOf({ hoursHeld, hold: swinging(40, 0.3, 25) }))!;
const exact = { halfWidth: 0, standardDeviation: 0.1 };

/** Constructed nights. */
describe("holdPlays", () => {
  it("is less open as if the tested hours were all there is", () => {
    const creeping = heldEvidence(evidenceOf({ hoursHeld: 8, hold: (hour) => 40 + 0.06 * hour }))!;
    const { plays, tested } = holdPlays(asked(39.5, 40.8, 36), creeping);
    const seen = requirementProbability(tested(), exact).met;
    expect(seen).toBeGreaterThan(0.95);
    expect(requirementProbability(plays, exact).met).toBeLessThan(seen - 0.03);
  });

  it("begins half of the scenarios where the test ended when the hold moved", () => {
    const moving = heldEvidence(evidenceOf({ hoursHeld: 12, hold: (hour) => 38 + 0.2 * hour }))!;
    const still = holdPlays(asked(36, 44, 12), steady(12)).plays.length;
    expect(holdPlays(asked(36, 44, 12), moving).plays).toHaveLength(2 * still);
  });

  it("is surer of a short test in the light of a long steady one", () => {
    const short = heldEvidence(
      evidenceOf({ hoursHeld: 6, hold: () => 40, stepMinutes: 10 }, { resolution: 0.1 }),
    )!;
    const long = strengthLikelihoods(scenarioEvidence(steady(36)));
    const alone = holdPlays(asked(39, 41, 36), short);
    const helped = holdPlays(asked(39, 41, 36), short, long);
    expect(helped.unseenUncertainty).toBeLessThan(alone.unseenUncertainty);
  });
});

describe("heldEvidence", () => {
  it("is null where the readings never settled", () => {
    const evidence = evidenceOf({ hoursHeld: 12, hold: swinging(40, 0.3, 25) });
    const none = { ...evidence, night: { ...evidence.night, hold: null, holdReadings: null } };
    expect(heldEvidence(none)).toBeNull();
  });
});
