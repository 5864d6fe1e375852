import { readingBehind } from "../thermometer/reading-behind.ts";
import {
  chanceAtLeast,
  expandedAt,
  guardedLevel,
  heatingBudget,
  standardAt,
  type HeatingThermometer,
} from "./heating-doubt.ts";
import { heatingReasons, leastReadings, readingsIn } from "./heating-reasons.ts";
import { gapOf, heldLevel, heldLevelAtMost, longestSpell } from "./heating-spells.ts";
import type { HeatingStep, HeatingTarget } from "./heating-types.ts";
import { equivalentMinutes, type HeatingReadings } from "./lethal-rate.ts";
import type { VerdictWord } from "./verdict-types.ts";
import { verdictWord } from "./verdict.ts";

/** Difference between trapezoid and straight lines as a standard uncertainty: a rectangle (JCGM 100:2008, 4.3.8). */
const overstatedShare = 1 / Math.sqrt(12);

/**
 * Reads a heating step: how long the log stood at or above the target, how
 * likely the truth did, and how many minutes at the target the whole log
 * stands for.
 *
 * A thermometer is off alike throughout a plateau, so the true spell is long
 * enough exactly where the truth behind `heldAt`, the highest temperature held
 * for the asked minutes, lies at or above the target. `holds` at `confidence`
 * or more, with four readings or more in the spell; `misses` where even the
 * most that gaps and the log's ends can hide is as unlikely; else `unproven`.
 *
 * @param readings corrected; at least one
 */
export const heatingStep = (
  readings: HeatingReadings,
  target: HeatingTarget,
  thermometer: HeatingThermometer,
  confidence: number,
): HeatingStep => {
  const longest = longestSpell(readings, target.celsius);
  const sure = guardedLevel(thermometer, target.celsius, "over");
  const guarded = longestSpell(readings, sure);
  const heldAt = heldLevel(readings, target.minutes);
  const probability = chanceAtLeast(target.celsius, heldAt ?? -Infinity, thermometer);
  const most = heldLevelAtMost(readings, target.minutes);
  const verdict = heatingVerdict(
    probability,
    chanceAtLeast(target.celsius, most, thermometer),
    readingsIn(readings, longest),
    confidence,
  );
  const found = {
    target,
    longest,
    guarded,
    peak: readings.celsius.reduce((high, value) => Math.max(high, value), -Infinity),
    heldAt,
    expandedUncertainty: expandedAt(thermometer, target.celsius),
    surelyAtReading: readingBehind(thermometer.model, sure),
    verdict,
    probability,
  };
  return {
    ...found,
    equivalentMinutes: equivalentOf(readings, target, thermometer),
    reasons: heatingReasons(found, readings),
    uncertainty: heatingBudget(thermometer, target.celsius),
  };
};

const heatingVerdict = (
  atLeast: number,
  atMost: number,
  readings: number,
  confidence: number,
): VerdictWord => {
  const seen = verdictWord(atLeast, confidence);
  if (seen === "holds") return readings < leastReadings ? "unproven" : "holds";
  return verdictWord(atMost, confidence) === "misses" ? "misses" : "unproven";
};

/**
 * Propagated to first order (JCGM 100:2008, 5.1.2): an offset u changes the
 * minutes by ln(10) / z of them for each degC, alike at all readings, with the
 * uncertainty at the temperature where most of them were earned.
 */
const equivalentOf = (
  readings: HeatingReadings,
  target: HeatingTarget,
  thermometer: HeatingThermometer,
): HeatingStep["equivalentMinutes"] => {
  const { minutes, overstated, centre } = equivalentMinutes(readings, target, gapOf(readings));
  const offset = Number.isNaN(centre) ? 0 : standardAt(thermometer, centre);
  const standardUncertainty = Math.hypot(
    (minutes * offset * Math.LN10) / target.z,
    overstatedShare * overstated,
  );
  return { value: minutes, standardUncertainty };
};
