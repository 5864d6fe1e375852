import { dwell } from "../hold/dwell.ts";
import type { Hold, ProbeNight } from "../hold/hold.ts";
import { celsiusDifference, fraction } from "../quantity.ts";
import { resolutionUncertainty } from "../thermometer/budget.ts";
import { heldEvidence, holdPlays, type HeldEvidence } from "./hold-plays.ts";
import { offsetFrom, type OffsetDistribution } from "./offset-distribution.ts";
import { weightedProbability, type WeightedPlays } from "./probability.ts";
import { verdictReasons, type WithoutSource } from "./reasons.ts";
import { testedHours } from "./scenarios.ts";
import { uncertaintyBudget } from "./uncertainty-budget.ts";
import type { VerdictEvidence } from "./verdict-evidence.ts";
import { verdictWithoutHold } from "./verdict-without-hold.ts";
import type { Requirement, UncertaintyComponent, Verdict, VerdictWord } from "./verdict-types.ts";

/** Less hold than this never gives `holds`; nor `misses` from inside the window. */
const leastHours = 3;
const leastReadings = 6;
/**
 * When the temperature fell away before the culture's hours were over, either
 * the person ended the test or the appliance switched itself off; nothing in
 * the readings tells which. Most who end a test stop the logger or take the
 * probe out, so the person is given one chance in five (an assumption).
 */
export const endedByPerson = 0.2;

/** Decides whether one set-up, as seen by one probe, meets a culture's requirement. */
export const decide = (requirement: Requirement, evidence: VerdictEvidence): Verdict => {
  const held = heldEvidence(evidence);
  if (held === null) return verdictWithoutHold(requirement, evidence);
  const { plays, tested, unseenUncertainty } = holdPlays(requirement, held);
  return verdictOn(requirement, held, {
    all: [{ weight: 1, plays }],
    tested: () => [{ weight: 1, plays: tested() }],
    unseenUncertainty,
  });
};

/** What the culture's hours may look like, by every test there is. */
export interface Outlook {
  readonly all: readonly WeightedPlays[];
  /** The same, as if the tested hours were all there is. */
  readonly tested: () => readonly WeightedPlays[];
  /** Standard uncertainty of the level in the hours after those tested, degC. */
  readonly unseenUncertainty: number;
}

/** The verdict from the scenarios of one test or several, and the night it is explained by. */
export const verdictOn = (
  requirement: Requirement,
  evidence: HeldEvidence,
  outlook: Outlook,
): Verdict => {
  const { hold, readings, night, confidence } = evidence;
  const found = weightedProbability(outlook.all, holdOffset(evidence));
  const fell = fellAway(night, hold, requirement.hours);
  const met = fell ? endedByPerson * found.met : found.met;
  const verdict = fell
    ? fallenWord(found.met, confidence)
    : guardedWord(met, requirement, evidence);
  const uncertainty = uncertaintyBudget(evidence, hold, outlook.unseenUncertainty);
  const inside = dwell(readings, requirement.low, requirement.high);
  return {
    requirement,
    verdict,
    probability: fraction(met),
    ceilingRisk: found.ceilingPassed === null ? null : fraction(found.ceilingPassed),
    dwell: inside,
    uncertainty,
    reasons: verdictReasons({
      requirement,
      night,
      hold,
      dwell: inside,
      verdict,
      ceilingPassed: found.ceilingPassed,
      uncertainty,
      fellAway: fell,
      tooLittle: tooLittle(hold),
      without: (source) => without(source, requirement, evidence, outlook),
    }),
  };
};

const holdOffset = ({
  thermometer,
  runToRun,
  resolution,
  hold,
}: HeldEvidence): OffsetDistribution =>
  offsetFrom(thermometer, [
    runToRun.value,
    resolutionUncertainty(resolution),
    hold.meanUncertainty,
  ]);

/** Whether the heat ended before the culture's hours were over. */
export const fellAway = (night: ProbeNight, hold: Hold, hours: number): boolean =>
  testedHours(hold) < hours &&
  night.phases.some((phase) => phase.kind === "cool-down" && phase.cause === "switched-off");

/** Whether a hold is too short, or too seldom read, to prove that anything holds. */
export const tooLittle = (hold: Hold): boolean =>
  hold.hours < leastHours || hold.readings < leastReadings;

/** `holds` from the asked confidence on, `misses` from one minus it down. */
export const verdictWord = (probability: number, confidence: number): VerdictWord =>
  probability >= confidence ? "holds" : probability <= 1 - confidence ? "misses" : "unproven";

/** A hold that fell away is no proof of holding; it misses only where it would have missed anyway. */
const fallenWord = (probability: number, confidence: number): VerdictWord =>
  verdictWord(probability, confidence) === "misses" ? "misses" : "unproven";

/** Too little hold never gives `holds`, and `misses` only where what was seen of it lies outside. */
const guardedWord = (
  probability: number,
  { low, high }: Requirement,
  { hold, confidence }: HeldEvidence,
): VerdictWord => {
  const plain = verdictWord(probability, confidence);
  if (!tooLittle(hold)) return plain;
  const outside = hold.mean < low || hold.mean > high;
  return plain === "misses" && outside ? "misses" : "unproven";
};

/** The verdict again with one source of doubt taken away: what would settle it. */
const without = (
  source: UncertaintyComponent["source"],
  requirement: Requirement,
  evidence: HeldEvidence,
  outlook: Outlook,
): WithoutSource => {
  const { met } = weightedProbability(
    source === "hours not tested" ? outlook.tested() : outlook.all,
    holdOffset(withoutSource(evidence, source)),
  );
  const verdict = guardedWord(met, requirement, evidence);
  return { source, probability: met, verdict };
};

const withoutSource = (
  evidence: HeldEvidence,
  source: UncertaintyComponent["source"],
): HeldEvidence => {
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
