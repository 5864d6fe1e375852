import { spreadFactor } from "../culture/fast-residual.ts";
import { endedByPerson, fellAway, verdictWord } from "../culture/verdict.ts";
import { testedHours } from "../culture/scenarios.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import { normalQuantile } from "../stats/normal.ts";
import type { Chance } from "./advice-types.ts";
import type { CourseShape } from "./course-shape.ts";
import { gatheredProbability, type GatheredPlays } from "./gathered-plays.ts";
import type { Expected } from "./expected.ts";
import type { HeldTest, Response } from "./response.ts";

/** Student's t as so many normal distributions of equal weight: quantiles of its scale. */
const scaleCount = 7;
const scaleQuantiles = Array.from({ length: scaleCount }, (_, index) =>
  normalQuantile((index + 0.5) / scaleCount),
);

/** A level this many standard deviations outside its window needs no arithmetic. */
const farOff = 12;

/** Of a level far off: it never serves, and lies wholly below the ceiling or above it. */
const farOffChance = ({ ceiling }: Requirement, mean: number): Omit<Chance, "verdict"> => ({
  probability: 0,
  ceilingRisk: ceiling === null ? null : Number(mean > ceiling),
});

/**
 * Probability that the next run of a set-up meets a culture's requirement: the
 * courses of the test that comes nearest, moved to the expected level, over the
 * distribution of that level (Student's t of the response, the room and the
 * thermometers).
 */
export const chanceOf = (
  requirement: Requirement,
  expected: Expected,
  shape: CourseShape,
  { response, confidence }: { readonly response: Response; readonly confidence: number },
): Chance => {
  const found = isFarOff(requirement, expected, shape)
    ? farOffChance(requirement, expected.mean)
    : probabilityAt(expected, shape, shape.outlook(requirement).gathered);
  const ends = heatEnds(response, requirement.hours);
  const probability = ends === null ? found.probability : endedByPerson * found.probability;
  // A heat that ended misses only where it would have missed anyway; see fallenWord of the verdicts.
  const word = verdictWord(found.probability, confidence);
  const proven = ends === null && shape.reference !== null && !shape.reference.settled.tooLittle;
  return {
    probability,
    ceilingRisk: found.ceilingRisk,
    verdict: word === "holds" && !proven ? "unproven" : word,
  };
};

const isFarOff = (
  { low, high, ceiling }: Requirement,
  { mean, scale, room, thermometer }: Expected,
  { assumedDeviation }: CourseShape,
): boolean => {
  const reach =
    farOff * Math.hypot(scale, room, thermometer.standardUncertainty, assumedDeviation, 0.1);
  return mean - reach > (ceiling ?? high) || mean + reach < low;
};

/** Over the distribution of the level; the plays lie about `shape.level`. */
export const probabilityAt = (
  { mean, scale, degreesOfFreedom, room, thermometer }: Expected,
  { level, assumedDeviation }: CourseShape,
  plays: GatheredPlays,
): Omit<Chance, "verdict"> => {
  const { halfWidth } = thermometer;
  const normal = Math.hypot(
    room,
    assumedDeviation,
    halfWidth === null ? thermometer.standardUncertainty : 0,
  );
  const factors = scaleFactors(degreesOfFreedom);
  let probability = 0;
  let passed: number | null = null;
  for (const factor of factors) {
    const standardDeviation = Math.hypot(normal, factor * scale);
    const offset = { halfWidth: halfWidth ?? 0, standardDeviation };
    const found = gatheredProbability(plays, mean - level, offset);
    probability += found.met / factors.length;
    if (found.ceilingPassed !== null) passed = (passed ?? 0) + found.ceilingPassed / factors.length;
  }
  return { probability, ceilingRisk: passed };
};

const scaleFactors = (degreesOfFreedom: number): readonly number[] =>
  degreesOfFreedom === Infinity
    ? [1]
    : scaleQuantiles.map((z) => spreadFactor(z, degreesOfFreedom));

const hoursOf = ({ settled }: HeldTest): number => testedHours(settled.evidence.hold);

/**
 * The test that shows the appliance's heat ending before the culture's hours
 * are over; null where the longest test does not.
 */
export const heatEnds = ({ tests }: Response, hours: number): HeldTest | null => {
  const longest = tests.reduce<HeldTest | null>(
    (a, b) => (a === null || hoursOf(b) > hoursOf(a) ? b : a),
    null,
  );
  if (longest === null) return null;
  const { night, hold } = longest.settled.evidence;
  return fellAway(night, hold, hours) ? longest : null;
};
