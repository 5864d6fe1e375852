import { fraction } from "../quantity.ts";
import { offsetCdf, offsetFrom } from "./offset-distribution.ts";
import type { Requirement, UncertaintyComponent, Verdict } from "./verdict-types.ts";
import type { VerdictEvidence } from "./verdict-evidence.ts";

/**
 * What can be said when the readings never settle. Only one thing is certain
 * enough: water that after hours of heating never came near the window misses
 * it. Everything else is unproven, with even odds, because there is no hold to
 * say more from.
 */
export const verdictWithoutHold = (
  requirement: Requirement,
  evidence: VerdictEvidence,
): Verdict => {
  const reach = reachProbability(requirement, evidence);
  const misses = reach <= 1 - evidence.confidence;
  const uncertainty: readonly UncertaintyComponent[] = [
    {
      source: "thermometer",
      standardUncertainty: evidence.thermometer.standardUncertainty,
      from: evidence.thermometer.from,
    },
  ];
  return {
    requirement,
    verdict: misses ? "misses" : "unproven",
    probability: fraction(misses ? reach : Math.min(0.5, reach)),
    ceilingRisk: null,
    dwell: null,
    uncertainty,
    reasons: misses
      ? [{ code: "never-reached", low: requirement.low, peak: evidence.night.peak! }]
      : [{ code: "no-hold" }],
  };
};

/** Hours of heating after which a set-up that never came near its window is taken to miss it. */
const enoughHeatingMinutes = 180;
/** How far above its highest reading an appliance still rising after hours may yet get (assumption), degC. */
const furtherRise = 1.5;

const reachProbability = (requirement: Requirement, evidence: VerdictEvidence): number => {
  const { phases, peak } = evidence.night;
  const heated = phases
    .filter((phase) => phase.kind === "warm-up")
    .reduce((sum, phase) => sum + phase.toMinute - phase.fromMinute, 0);
  if (peak === null || heated < enoughHeatingMinutes) return 0.5;
  const offset = offsetFrom(evidence.thermometer, [evidence.runToRun.value, furtherRise]);
  return 1 - offsetCdf(requirement.low - peak, offset);
};
