import type { Requirement } from "./verdict-types.ts";
import { acceptableOffsets } from "./acceptance.ts";
import { offsetCdf, type OffsetDistribution } from "./offset-distribution.ts";
import type { Scenarios } from "./scenarios.ts";

export interface RequirementProbability {
  /** That the share inside the window is reached and the ceiling not passed. */
  readonly met: number;
  /** That the ceiling is passed; null without a ceiling. */
  readonly ceilingPassed: number | null;
}

/**
 * Probability that a requirement is met: over all scenarios for the hours not
 * tested, and for each over the offset between readings and truth.
 *
 * The conformance probability of JCGM 106:2012, 6.2, for a requirement on a
 * whole course of temperatures instead of one value.
 */
export const requirementProbability = (
  scenarios: Scenarios,
  offset: OffsetDistribution,
  requirement: Requirement,
): RequirementProbability => {
  const ceiling = requirement.ceiling ?? Infinity;
  let met = 0;
  let below = 0;
  for (const path of scenarios.paths) {
    const values = courseValues(path, scenarios.fast.values);
    const peak = maximum(path) + scenarios.fast.top;
    for (const { from, to } of acceptableOffsets(values, peak, { ...requirement, ceiling })) {
      met += offsetCdf(to, offset) - offsetCdf(from, offset);
    }
    below += offsetCdf(ceiling - peak, offset);
  }
  const count = scenarios.paths.length;
  return {
    met: Math.min(1, Math.max(0, met / count)),
    ceilingPassed: requirement.ceiling === null ? null : 1 - below / count,
  };
};

/** Every slow value with every fast value added, in rising order. */
const courseValues = (path: Float64Array, fast: Float64Array): Float64Array => {
  const values = new Float64Array(path.length * fast.length);
  for (let i = 0; i < path.length; i += 1) {
    for (let j = 0; j < fast.length; j += 1) values[i * fast.length + j] = path[i]! + fast[j]!;
  }
  return values.sort();
};

const maximum = (values: Float64Array): number => {
  let highest = -Infinity;
  for (const value of values) if (value > highest) highest = value;
  return highest;
};
