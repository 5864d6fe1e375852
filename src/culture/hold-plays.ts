import type { Hold, HoldReadings } from "../hold/hold.ts";
import { scenarioPlays, type ScenarioPlay } from "./probability.ts";
import { drawScenarios, testedHours, type ScenarioEvidence, type Scenarios } from "./scenarios.ts";
import type { VerdictEvidence } from "./verdict-evidence.ts";
import type { Requirement } from "./verdict-types.ts";

/** A test in which the readings settled. */
export interface HeldEvidence extends VerdictEvidence {
  readonly hold: Hold;
  readonly readings: HoldReadings;
}

/** The evidence with its hold at hand; null where the readings never settled. */
export const heldEvidence = (evidence: VerdictEvidence): HeldEvidence | null => {
  const { hold, holdReadings: readings } = evidence.night;
  return hold === null || readings === null ? null : { ...evidence, hold, readings };
};

/** What one test lets expect of the culture's hours. */
export interface HoldPlays {
  readonly plays: readonly ScenarioPlay[];
  /** The same, as if the tested hours were all there is. */
  readonly tested: () => readonly ScenarioPlay[];
  /** Standard uncertainty of the level in the hours after those tested, degC. */
  readonly unseenUncertainty: number;
}

/**
 * Draws a test's scenarios and works out which offsets meet the requirement in
 * each.
 *
 * @param alsoSeen see drawScenarios
 */
export const holdPlays = (
  requirement: Requirement,
  evidence: HeldEvidence,
  alsoSeen: readonly number[] = [],
): HoldPlays => {
  const { whole, tested } = holdScenarios(requirement.hours, evidence, alsoSeen);
  return {
    plays: whole.flatMap((scenarios) => scenarioPlays(scenarios, requirement)),
    tested: () => scenarioPlays(tested, requirement),
    unseenUncertainty: whole[0]!.unseenUncertainty,
  };
};

/** Scenarios of one test, before any window is asked about. */
export interface HoldScenarios {
  /** Sets that count alike: one, or two where it matters when the culture's hours begin. */
  readonly whole: readonly Scenarios[];
  /** As if the tested hours were all there is. */
  readonly tested: Scenarios;
}

/** Draws the scenarios for a culture of `hours` hours; `alsoSeen` as in drawScenarios. */
export const holdScenarios = (
  hours: number,
  evidence: HeldEvidence,
  alsoSeen: readonly number[] = [],
): HoldScenarios => {
  const { hold } = evidence;
  const known = scenarioEvidence(evidence);
  const first = drawScenarios(known, hours, 0, alsoSeen);
  const later = isMoving(hold) ? [drawScenarios(known, hours, testedHours(hold), alsoSeen)] : [];
  return { whole: [first, ...later], tested: testedOnly(first, hold) };
};

export const scenarioEvidence = (evidence: HeldEvidence): ScenarioEvidence => ({
  hold: evidence.hold,
  readings: evidence.readings,
  warmUpMinutes: evidence.night.warmUp?.minutesToHold ?? null,
  resolution: evidence.resolution,
  thermostat: evidence.thermostat ?? null,
  roomRange: evidence.room === null ? null : evidence.room.high - evidence.room.low,
});

/**
 * A hold that moved this far is still settling or follows the room, so it
 * matters when the culture's hours begin: half of the scenarios begin with the
 * hold, half where the test ended (an assumption), degC.
 */
const movingBy = 1;

const isMoving = (hold: Hold): boolean =>
  (hold.drift.low > 0 || hold.drift.high < 0) &&
  Math.abs(hold.drift.perHour) * testedHours(hold) > movingBy;

/** The same scenarios, as if the tested hours were all there is. */
const testedOnly = (scenarios: Scenarios, hold: Hold): Scenarios => {
  const tested = testedHours(hold);
  const seen = Math.max(1, scenarios.hours.filter((hour) => hour <= tested).length);
  return { ...scenarios, paths: scenarios.paths.map((path) => path.subarray(0, seen)) };
};
