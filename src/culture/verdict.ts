import { dwell } from "../hold/dwell.ts";
import type { Hold, ProbeNight } from "../hold/hold.ts";
import { celsiusDifference, fraction } from "../quantity.ts";
import { resolutionUncertainty } from "../thermometer/budget.ts";
import { offsetFrom, type OffsetDistribution } from "./offset-distribution.ts";
import { requirementProbability, scenarioPlays, type ScenarioPlay } from "./probability.ts";
import { verdictReasons, type WithoutSource } from "./reasons.ts";
import { drawScenarios, testedHours, type Scenarios } from "./scenarios.ts";
import { uncertaintyBudget } from "./uncertainty-budget.ts";
import type { VerdictEvidence } from "./verdict-evidence.ts";
import { verdictWithoutHold } from "./verdict-without-hold.ts";
import type { Requirement, UncertaintyComponent, Verdict, VerdictWord } from "./verdict-types.ts";

/** Less hold than this never gives `holds`. */
const leastHours = 3;
const leastReadings = 6;
/**
 * When the temperature fell away before the culture's hours were over, either
 * the person ended the test or the appliance switched itself off; nothing in
 * the readings tells which. Most who end a test stop the logger or take the
 * probe out, so the person is given one chance in five (an assumption).
 */
const endedByPerson = 0.2;

/** Decides whether one set-up, as seen by one probe, meets a culture's requirement. */
export const decide = (requirement: Requirement, evidence: VerdictEvidence): Verdict => {
  const { hold, holdReadings } = evidence.night;
  if (hold === null || holdReadings === null) return verdictWithoutHold(requirement, evidence);
  const known = {
    hold,
    readings: holdReadings,
    warmUpMinutes: evidence.night.warmUp?.minutesToHold ?? null,
    resolution: evidence.resolution,
    roomRange: evidence.room === null ? null : evidence.room.high - evidence.room.low,
  };
  const scenarios = drawScenarios(known, requirement.hours);
  const offset = holdOffset(evidence, hold);
  const later = isMoving(hold)
    ? scenarioPlays(drawScenarios(known, requirement.hours, testedHours(hold)), requirement)
    : [];
  const plays = [...scenarioPlays(scenarios, requirement), ...later];
  const found = requirementProbability(plays, offset);
  const fell = fellAway(evidence.night, hold, requirement.hours);
  const met = fell ? endedByPerson * found.met : found.met;
  const verdict = fell
    ? fallenWord(found.met, evidence.confidence)
    : guardedWord(met, hold, evidence.confidence);
  const uncertainty = uncertaintyBudget(evidence, hold, scenarios.unseenUncertainty);
  const inside = dwell(holdReadings, requirement.low, requirement.high);
  return {
    requirement,
    verdict,
    probability: fraction(met),
    ceilingRisk: found.ceilingPassed === null ? null : fraction(found.ceilingPassed),
    dwell: inside,
    uncertainty,
    reasons: verdictReasons({
      requirement,
      night: evidence.night,
      hold,
      dwell: inside,
      verdict,
      ceilingPassed: found.ceilingPassed,
      uncertainty,
      fellAway: fell,
      tooLittle: tooLittle(hold),
      without: (source) =>
        without(source, evidence, hold, {
          all: plays,
          tested: () => scenarioPlays(testedOnly(scenarios, hold), requirement),
        }),
    }),
  };
};

const holdOffset = (
  { thermometer, runToRun, resolution }: VerdictEvidence,
  hold: Hold,
): OffsetDistribution =>
  offsetFrom(thermometer, [
    runToRun.value,
    resolutionUncertainty(resolution),
    hold.meanUncertainty,
  ]);

/**
 * A hold that moved this far is still settling or follows the room, so it
 * matters when the culture's hours begin: half of the scenarios begin with the
 * hold, half where the test ended (an assumption), degC.
 */
const movingBy = 1;

const isMoving = (hold: Hold): boolean =>
  (hold.drift.low > 0 || hold.drift.high < 0) &&
  Math.abs(hold.drift.perHour) * testedHours(hold) > movingBy;

const fellAway = (night: ProbeNight, hold: Hold, hours: number): boolean =>
  testedHours(hold) < hours &&
  night.phases.some((phase) => phase.kind === "cool-down" && phase.cause === "switched-off");

const tooLittle = (hold: Hold): boolean => hold.hours < leastHours || hold.readings < leastReadings;

const word = (probability: number, confidence: number): VerdictWord =>
  probability >= confidence ? "holds" : probability <= 1 - confidence ? "misses" : "unproven";

/** A hold that fell away is no proof of holding; it misses only where it would have missed anyway. */
const fallenWord = (probability: number, confidence: number): VerdictWord =>
  word(probability, confidence) === "misses" ? "misses" : "unproven";

const guardedWord = (probability: number, hold: Hold, confidence: number): VerdictWord => {
  const plain = word(probability, confidence);
  return plain === "holds" && tooLittle(hold) ? "unproven" : plain;
};

/** The verdict again with one source of doubt taken away: what would settle it. */
const without = (
  source: UncertaintyComponent["source"],
  evidence: VerdictEvidence,
  hold: Hold,
  plays: { readonly all: readonly ScenarioPlay[]; readonly tested: () => readonly ScenarioPlay[] },
): WithoutSource => {
  const { met } = requirementProbability(
    source === "hours not tested" ? plays.tested() : plays.all,
    holdOffset(withoutSource(evidence, source), hold),
  );
  return { source, probability: met, verdict: guardedWord(met, hold, evidence.confidence) };
};

const withoutSource = (
  evidence: VerdictEvidence,
  source: UncertaintyComponent["source"],
): VerdictEvidence => {
  const none = celsiusDifference(0);
  if (source === "thermometer") {
    const thermometer = { ...evidence.thermometer, standardUncertainty: none, accuracy: null };
    return { ...evidence, thermometer };
  }
  if (source === "run to run") {
    return { ...evidence, runToRun: { ...evidence.runToRun, value: none } };
  }
  return evidence;
};

/** The same scenarios, as if the tested hours were all there is. */
const testedOnly = (scenarios: Scenarios, hold: Hold): Scenarios => {
  const tested = testedHours(hold);
  const seen = Math.max(1, scenarios.hours.filter((hour) => hour <= tested).length);
  return { ...scenarios, paths: scenarios.paths.map((path) => path.subarray(0, seen)) };
};
