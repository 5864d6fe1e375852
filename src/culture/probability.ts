import { highest } from "../stats/summary.ts";
import { acceptableOffsets, type OffsetInterval } from "./acceptance.ts";
import { offsetCdf, type OffsetDistribution } from "./offset-distribution.ts";
import type { Scenarios } from "./scenarios.ts";
import type { Requirement } from "./verdict-types.ts";

export interface RequirementProbability {
  /** That the share inside the window is reached and the ceiling not passed. */
  readonly met: number;
  /** That the ceiling is passed; null without a ceiling. */
  readonly ceilingPassed: number | null;
}

/** What one scenario allows the offset between readings and truth to be. */
export interface ScenarioPlay {
  /** Offsets that meet the requirement. */
  readonly intervals: readonly OffsetInterval[];
  /** Offsets up to this stay at or below the ceiling. */
  readonly belowCeiling: number;
}

/** Works out, once per scenario, which offsets meet the requirement. */
export const scenarioPlays = (
  scenarios: Scenarios,
  requirement: Requirement,
): readonly ScenarioPlay[] => {
  const ceiling = requirement.ceiling ?? Infinity;
  return scenarios.paths.map((path, index) => {
    const scale = scenarios.fastScales[index]!;
    const fast = scenarios.fast.values.map((value) => scale * value);
    const peak = highest(path) + scale * scenarios.fast.top;
    return {
      intervals: acceptableOffsets(course(path, fast), peak, { ...requirement, ceiling }),
      belowCeiling: ceiling - peak,
    };
  });
};

/**
 * Probability that a requirement is met: over all scenarios for the hours not
 * tested, and for each over the offset between readings and truth.
 *
 * The conformance probability of JCGM 106:2012, 6.2, for a requirement on a
 * whole course of temperatures instead of one value.
 */
export const requirementProbability = (
  plays: readonly ScenarioPlay[],
  offset: OffsetDistribution,
): RequirementProbability => {
  let met = 0;
  let below = 0;
  for (const { intervals, belowCeiling } of plays) {
    for (const { from, to } of intervals) met += offsetCdf(to, offset) - offsetCdf(from, offset);
    below += offsetCdf(belowCeiling, offset);
  }
  const hasCeiling = plays.some(({ belowCeiling }) => belowCeiling < Infinity);
  return {
    met: Math.min(1, Math.max(0, met / plays.length)),
    ceilingPassed: hasCeiling ? 1 - below / plays.length : null,
  };
};

/** Scenarios of one test among several, with its share in what is expected. */
export interface WeightedPlays {
  /** The weights sum to 1. */
  readonly weight: number;
  readonly plays: readonly ScenarioPlay[];
}

/** The same over the scenarios of several tests, each with its weight. */
export const weightedProbability = (
  parts: readonly WeightedPlays[],
  offset: OffsetDistribution,
): RequirementProbability => {
  let met = 0;
  let passed: number | null = null;
  for (const { weight, plays } of parts) {
    const found = requirementProbability(plays, offset);
    met += weight * found.met;
    if (found.ceilingPassed !== null) passed = (passed ?? 0) + weight * found.ceilingPassed;
  }
  return { met: Math.min(1, met), ceilingPassed: passed };
};

/** Every slow value with every fast value added, in rising order. */
const course = (path: Float64Array, fast: Float64Array): Float64Array => {
  const values = new Float64Array(path.length * fast.length);
  for (let i = 0; i < path.length; i += 1) {
    for (let j = 0; j < fast.length; j += 1) values[i * fast.length + j] = path[i]! + fast[j]!;
  }
  return values.toSorted();
};
